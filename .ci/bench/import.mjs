// What importing the whole handbook takes, in time of the processor inside a fresh node, beside general libraries.
import { spawnSync } from "node:child_process";
import { pathToFileURL } from "node:url";
import { mainModule, root } from "../support/built.mjs";
import { ratioAtMost, told } from "./row.mjs";
import { median } from "./stopwatch.mjs";

function cost(module) {
  const code = `const before = process.cpuUsage(); await import(${JSON.stringify(module)});
    const { user, system } = process.cpuUsage(before); process.stdout.write(String((user + system) / 1000));`;
  const { status, stdout, stderr } = spawnSync(process.execPath, ["--input-type=module", "-e", code], {
    cwd: root,
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(stderr);
  return Number(stdout);
}

const others = ["decimal.js", "safe-units", "mathjs", "js-quantities", "convert-units", "unitmath"];

export function figures() {
  const modules = [pathToFileURL(mainModule("maths")).href, ...others];
  const times = modules.map(() => []);
  for (let round = 0; round < 11; round += 1) modules.forEach((module, at) => times[at].push(cost(module)));
  const [ours, ...theirs] = times.map(median);
  const bySafeUnits = times[0].map((time, round) => time / times[1 + others.indexOf("safe-units")][round]);
  return [
    // Most of it is V8 reading the sums, about 20 ns a character, and decimal.js, a quarter.
    // Drawn up for 0.6; thirty-three formulas more and the operators of the check are read with the rest.
    ratioAtMost("import of @thrum/maths, ÷ that of safe-units", median(bySafeUnits), 0.9),
    told("import of @thrum/maths", ours, "ms"),
    ...others.map((name, at) => told(`import of ${name}`, theirs[at], "ms")),
  ];
}
