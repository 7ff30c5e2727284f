// What importing the whole handbook adds to the start of Node, in pairs of cold starts.
import { spawnSync } from "node:child_process";
import { pathToFileURL } from "node:url";
import { mainModule, root } from "../built.mjs";
import { atMost, told } from "./row.mjs";
import { median } from "./stopwatch.mjs";

function start(code) {
  const started = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, ["--input-type=module", "-e", code], {
    cwd: root,
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(stderr);
  return Number(process.hrtime.bigint() - started) / 1e6;
}

/** Milliseconds that loading each module adds to the start of Node, all of them once in every round. */
function added(modules, rounds) {
  const times = [[], ...modules.map(() => [])];
  const codes = ["", ...modules.map((module) => `import ${JSON.stringify(module)};`)];
  for (let round = 0; round < rounds; round += 1) codes.forEach((code, at) => times[at].push(start(code)));
  const [bare, ...loaded] = times.map(median);
  return loaded.map((time) => time - bare);
}

const others = ["decimal.js", "mathjs", "js-quantities", "convert-units", "unitmath", "safe-units"];

export function figures() {
  const [ours, ...theirs] = added([pathToFileURL(mainModule("maths")).href, ...others], 11);
  return [
    atMost("import of @thrum/maths over a bare node", ours, 15, "ms"),
    ...others.map((name, at) => told(`import of ${name} over a bare node`, theirs[at], "ms")),
  ];
}
