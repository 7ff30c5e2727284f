import { QuantityError } from "@thrum/maths";
import { checkedJob } from "../job/checked-job.js";
import type { Job } from "../job/job.js";
import { planOf } from "./plan-data.js";
import type { PlanData } from "./plan-data.js";

/**
 * Plans one warp: all that the job gives, and of the rest which keys it waits for.
 *
 * @param job as `readJob` gives it, or made with the units of the maths; every key may be left out
 * @returns the plan as data; `planText` and `planHtml` write it out
 * @throws QuantityError with every fault of a job that is none
 */
export function planWarp(job: Job): PlanData {
  const reading = checkedJob(job);
  if (reading.ok) return planOf(reading.value);
  const [first, ...others] = reading.faults;
  const here = { function: "planWarp" };
  throw new QuantityError({ ...first, ...here }, ...others.map((fault) => ({ ...fault, ...here })));
}
