// Checks the types of everything together with its tests, of what the packages publish, of the engine alone, of the small
// apps, which know a browser, and of the app with the templates of its screens; two projects at a time.
import { spawn } from "node:child_process";

const tsc = "node_modules/typescript/bin/tsc";
const app = "examples/at-the-loom";
const waiting = [
  [".ci", tsc],
  [app, `${app}/node_modules/vue-tsc/bin/vue-tsc.js`],
  [".ci/lint/tsconfig.packages.json", tsc],
  [".ci/lint/tsconfig.engine.json", tsc],
  ["examples/small-apps", tsc],
];
const failed = [];

async function checkOnes() {
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    const [project, compiler] = next;
    const running = spawn(process.execPath, [compiler, "--noEmit", "-p", project], { stdio: "inherit" });
    if ((await new Promise((done) => running.on("close", done))) !== 0) failed.push(project);
  }
}

await Promise.all([checkOnes(), checkOnes()]);
if (failed.length > 0) {
  process.stderr.write(`types do not hold in ${failed.join(", ")}\n`);
  process.exit(1);
}
