import { QuantityError } from "@thrum/maths";
import type { Fault } from "@thrum/maths";
import { isChecked } from "./checked-jobs.js";
import { checkedJob } from "./job-faults.js";
import type { Job } from "./job.js";
import { madeAmounts } from "./made-amounts.js";
import { jobSchema } from "./schema.js";

/** A job as a program gives it; what is wrong with it is thrown, all of it at once. */
export function givenJob(job: unknown): Job {
  if (isChecked(job)) return job;
  const checked = checkedJob(jobSchema(madeAmounts), job);
  if (checked.ok) return checked.job;
  const faults = checked.faults.map(({ path, ...words }): Fault => ({
    ...words,
    function: "planWarp",
    path: ["job", ...path],
    params: {},
  }));
  const [first, ...others] = faults;
  if (first === undefined) throw new RangeError("a job was refused without a fault");
  throw new QuantityError(first, ...others);
}
