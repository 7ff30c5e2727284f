// the tarballs that are published, in reports/tarballs. It wants packages already built.
import { root } from "../support/built.mjs";
import { packedTarballs } from "./packed.mjs";

process.stdout.write(`${packedTarballs(`${root}reports/tarballs`).join("\n")}\n`);
