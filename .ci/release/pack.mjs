// node .ci/release/pack.mjs [TARBALL…]: checks the tarballs that would be published, or those named: their manifests (publint)
// and their types (attw).
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { root } from "../support/built.mjs";
import { packedTarballs } from "./packed.mjs";

const checks = [
  ["publint/src/cli.js", "--strict"],
  ["@arethetypeswrong/cli/dist/index.js", "--profile", "esm-only"],
];
const named = process.argv.slice(2);
const tarballs = named.length > 0 ? named : packedTarballs(join(root, "reports/packed"));
const failed = tarballs.filter((tarball) =>
  checks.some(([program, ...options]) => {
    const check = [join(root, "node_modules", program), ...options, tarball];
    return spawnSync(process.execPath, check, { stdio: "inherit" }).status !== 0;
  }),
);
if (failed.length > 0) {
  process.stderr.write(`not fit to publish: ${failed.join(", ")}\n`);
  process.exit(1);
}
