// The same work by ours and by general libraries. One loop is compiled well in one process and half as well in the next,
// ours and theirs alike, so each figure is the median of five processes.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { ratioAtLeast, told } from "./row.mjs";
import { median } from "./stopwatch.mjs";

const budgets = {
  "held yards told in metres, mathjs": 10,
  "yards made and told in metres, mathjs": 3,
  "yards and feet added, mathjs": 1,
  // Slower than a double by what 34 digits of two divisions and the check of six inputs take.
  "a warp's length from numbers, mathjs": 1,
};

function timesOfOneRun() {
  const script = fileURLToPath(new URL("conversion-times.mjs", import.meta.url));
  const { status, stdout, stderr } = spawnSync(process.execPath, [script], { encoding: "utf8" });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout);
}

export function figures() {
  const runs = Array.from({ length: 5 }, timesOfOneRun);
  return Object.entries(runs[0]).flatMap(([work, byLibrary]) =>
    Object.keys(byLibrary).map((library) => {
      const figure = median(runs.map((run) => run[work][library]));
      if (library === "ours") return told(`${work}, ours`, figure, "µs");
      const [line, budget] = [`${work}, ${library} ÷ ours`, budgets[`${work}, ${library}`]];
      return budget === undefined ? told(line, figure, "×") : ratioAtLeast(line, figure, budget);
    }),
  );
}
