// What the command takes beside a bare node, in time of the processor from start to end, in turns of cold starts.
import { spawnSync } from "node:child_process";
import { root } from "../support/built.mjs";
import { ratioAtMost, told } from "./row.mjs";
import { median } from "./stopwatch.mjs";

const telling =
  "data:text/javascript,process.on('exit',()=>{const{user,system}=process.cpuUsage();process.stderr.write('@'+(user+system)/1000)})";

function run(...args) {
  const { status, stderr } = spawnSync(process.execPath, ["--import", telling, ...args], {
    cwd: root,
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(stderr);
  return Number(stderr.slice(stderr.lastIndexOf("@") + 1));
}

export function figures() {
  const [bare, help, plan] = [[], [], []];
  for (let round = 0; round < 11; round += 1) {
    bare.push(run("-e", "0"));
    help.push(run("packages/plan/dist/cli.js", "help"));
    plan.push(run("packages/plan/dist/cli.js", "plan", "examples/jobs/2-hall-napkins.yaml"));
  }
  const over = (times) => median(times.map((time, round) => time / bare[round]));
  return [
    // A bare node takes 62 ms where help may take 25 more. A third of a plan is the YAML parser, which node reads from some
    // seventy files: bundled, it would be quicker and its mended versions would not reach users without a release of ours.
    ratioAtMost("thrum help, ÷ a bare node", over(help), 1.4),
    // Drawn up for 3.2; the list of figures is made as the module loads. What a bare node takes sways by half on one machine,
    // and a plan does not with it: between 5.7 and 8.4 in one day.
    ratioAtMost("thrum plan, ÷ a bare node", over(plan), 8),
    told("thrum help over a bare node", median(help) - median(bare), "ms"),
    told("thrum plan over a bare node", median(plan) - median(bare), "ms"),
  ];
}
