// Planning one warp from a job already read, warm.
import { readFileSync } from "node:fs";
import { built, root } from "../built.mjs";
import { atMost } from "./row.mjs";
import { timesOf } from "./stopwatch.mjs";

export async function figures() {
  const { planWarp, readJob } = await built("plan");
  const reading = readJob(readFileSync(`${root}examples/jobs/2-hall-napkins.yaml`, "utf8"));
  const [plan] = timesOf([() => planWarp(reading.job)], { calls: 30 });
  return [atMost("a whole plan, warm", plan / 1e6, 5, "ms")];
}
