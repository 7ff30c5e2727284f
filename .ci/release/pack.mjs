// Checks the tarballs that would be published: their manifests (publint) and their types (attw).
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { root } from "../support/built.mjs";
import { packedTarballs } from "./packed.mjs";

const checks = [
  ["publint/src/cli.js", "--strict"],
  ["@arethetypeswrong/cli/dist/index.js", "--profile", "esm-only"],
];
const failed = packedTarballs(join(root, "reports/packed")).filter((tarball) =>
  checks.some(([program, ...options]) => {
    const check = [join(root, "node_modules", program), ...options, tarball];
    return spawnSync(process.execPath, check, { stdio: "inherit" }).status !== 0;
  }),
);
if (failed.length > 0) {
  process.stderr.write(`not fit to publish: ${failed.join(", ")}\n`);
  process.exit(1);
}
