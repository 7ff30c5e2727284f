// pnpm typecheck [PROJECT…]: checks the types of all projects, or of those named, two at a time.
import { spawn } from "node:child_process";
import { typedProjects } from "./typed-projects.mjs";

const named = process.argv.slice(2).map((project) => [project, "node_modules/typescript/bin/tsc"]);
const waiting = named.length > 0 ? named : [...typedProjects];
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
