// What importing the whole handbook adds to the start of Node, in pairs of cold starts.
import { spawnSync } from "node:child_process";
import { pathToFileURL } from "node:url";
import { mainModule } from "../built.mjs";
import { atMost } from "./row.mjs";
import { median } from "./stopwatch.mjs";

function start(code) {
  const started = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, ["--input-type=module", "-e", code], { encoding: "utf8" });
  if (status !== 0) throw new Error(stderr);
  return Number(process.hrtime.bigint() - started) / 1e6;
}

export function figures() {
  const code = `import ${JSON.stringify(pathToFileURL(mainModule("maths")).href)};`;
  const bare = [];
  const loaded = [];
  for (let pair = 0; pair < 15; pair += 1) {
    bare.push(start(""));
    loaded.push(start(code));
  }
  return [atMost("import of @thrum/maths over a bare node", median(loaded) - median(bare), 15, "ms")];
}
