// Checks the types of everything together, of each package as its readers' compilers see it, of the engine alone, of the
// small apps, which know a browser, and of the app with the templates of its screens.
import { readdirSync } from "node:fs";
import { spawnSync } from "node:child_process";

const projects = [
  ".ci",
  ".ci/tsconfig.engine.json",
  ...readdirSync("packages").map((name) => `packages/${name}`),
  "examples/small-apps",
];
const failed = projects.filter((project) => {
  const tsc = ["node_modules/typescript/bin/tsc", "--noEmit", "-p", project];
  return spawnSync(process.execPath, tsc, { stdio: "inherit" }).status !== 0;
});
const app = "examples/at-the-loom";
const vueTsc = [`${app}/node_modules/vue-tsc/bin/vue-tsc.js`, "--noEmit", "-p", app];
if (spawnSync(process.execPath, vueTsc, { stdio: "inherit" }).status !== 0) failed.push(app);
if (failed.length > 0) {
  process.stderr.write(`types do not hold in ${failed.join(", ")}\n`);
  process.exit(1);
}
