import fc from "fast-check";
import { expect, it } from "vitest";
import { mutatedJobs } from "#ci/mutated-jobs.js";
import { readJob } from "../job/read-job.js";
import { planText } from "../views/text.js";
import { planOf } from "./plan-data.js";

const [few, number] = [80, Number(process.env["THRUM_MUTATED_JOBS"] ?? 80)];
const SEED = 20261130;

it("plans every changed job that is read, and prints no slip of a program", () => {
  let [planned, all] = [0, 0];
  fc.assert(
    fc.property(mutatedJobs, (text) => {
      const reading = readJob(text);
      all += 1;
      if (!reading.ok) return;
      planned += 1;
      expect(planText(planOf(reading.value))).not.toMatch(/\bundefined\b|\bNaN\b|\bInfinity\b|\[object/u);
    }),
    { seed: SEED, numRuns: number, endOnFailure: true },
  );
  if (number > few)
    process.stdout.write(`seed ${String(SEED)}: ${String(planned)} of ${String(all)} planned, the others refused\n`);
  expect(planned / all).toBeGreaterThan(0.3);
});
