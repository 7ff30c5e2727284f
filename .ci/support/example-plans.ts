// The nine jobs of the examples with their plans.
import { planOf } from "../../packages/plan/src/data/plan-data.js";
import type { PlanData } from "../../packages/plan/src/data/plan-data.js";
import { exampleNames, exampleText, jobIn } from "./example-jobs.js";

export const examplePlans: readonly (readonly [name: string, plan: PlanData])[] = exampleNames.map((name) => [
  name,
  planOf(jobIn(exampleText(name))),
]);

/** One of them. */
export function examplePlan(name: string): PlanData {
  const found = examplePlans.find(([one]) => one === name);
  if (found === undefined) throw new RangeError(name);
  return found[1];
}
