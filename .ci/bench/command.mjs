// What the command takes beside a bare node, from its start to the printed plan, in pairs of cold starts.
import { spawnSync } from "node:child_process";
import { root } from "../built.mjs";
import { atMost } from "./row.mjs";
import { median } from "./stopwatch.mjs";

function run(...args) {
  const started = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: "utf8" });
  if (status !== 0) throw new Error(stderr);
  return Number(process.hrtime.bigint() - started) / 1e6;
}

export function figures() {
  const bare = [];
  const planned = [];
  for (let pair = 0; pair < 9; pair += 1) {
    bare.push(run("-e", "0"));
    planned.push(run("packages/plan/dist/cli.js", "plan", "examples/hall-napkins/job.yaml"));
  }
  return [atMost("thrum plan over a bare node", median(planned) - median(bare), 300, "ms")];
}
