// The nine jobs of the examples with their plans.
import { readdirSync, readFileSync } from "node:fs";
import { planOf } from "../../packages/plan/src/data/plan-data.js";
import type { PlanData } from "../../packages/plan/src/data/plan-data.js";
import { faultsText } from "../../packages/plan/src/job/fault.js";
import type { Job } from "../../packages/plan/src/job/job.js";
import { readJob } from "../../packages/plan/src/job/read-job.js";

const FOLDER = "examples/jobs/";

/** A job of its text. */
export function jobIn(text: string): Job {
  const reading = readJob(text);
  if (!reading.ok) throw new Error(faultsText(reading.faults));
  return reading.value;
}

export const examplePlans: readonly (readonly [name: string, plan: PlanData])[] = readdirSync(FOLDER)
  .filter((name) => /^\d[^.]*\.yaml$/u.test(name))
  .map((name) => [name.replace(".yaml", ""), planOf(jobIn(readFileSync(FOLDER + name, "utf8")))]);

/** One of them. */
export function examplePlan(name: string): PlanData {
  const found = examplePlans.find(([one]) => one === name);
  if (found === undefined) throw new RangeError(name);
  return found[1];
}
