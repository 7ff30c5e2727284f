// pnpm generate: writes all that is made from the declarations and committed. With `--check` it only says what is stale.
import { spawnSync } from "node:child_process";
import { root } from "../support/built.mjs";

const writers = [
  ".ci/build/sources.mjs",
  ".ci/build/catalogue.mjs",
  ".ci/build/doc-tags.mjs",
  ".ci/build/job-schema.mjs",
  "docs/.vitepress/pages/write.mjs",
];
const failed = writers.filter(
  (writer) =>
    spawnSync(process.execPath, [writer, ...process.argv.slice(2)], { cwd: root, stdio: "inherit" }).status !== 0,
);
process.exitCode = failed.length === 0 ? 0 : 1;
