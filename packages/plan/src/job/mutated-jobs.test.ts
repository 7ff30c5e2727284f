import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mutatedJobs } from "#ci/mutated-jobs.js";
import { faultText } from "./fault.js";
import { jobText } from "./job-text.js";
import { readJob } from "./read-job.js";

const number = Number(process.env["THRUM_MUTATED_JOBS"] ?? 300);

describe("changed jobs", () => {
  it("are read as what their text says again, or refused with places, whatever was changed", () => {
    let [read, all] = [0, 0];
    const faults = new Map<string, number>();
    fc.assert(
      fc.property(mutatedJobs, (text) => {
        const reading = readJob(text);
        all += 1;
        if (reading.ok) {
          read += 1;
          const again = readJob(jobText(reading.value));
          expect(again.ok && again.value).toEqual(reading.value);
          return;
        }
        expect(reading.faults.length).toBeGreaterThan(0);
        for (const fault of reading.faults) {
          faults.set(fault.code, (faults.get(fault.code) ?? 0) + 1);
          expect(fault.line).toBeGreaterThan(0);
          expect(fault.remedy).not.toBe("");
          expect(faultText(fault)).not.toMatch(/[\p{Cc}\p{Cf}]|undefined|NaN|\[object/u);
        }
      }),
      { seed: 20261130, numRuns: number, endOnFailure: true },
    );
    if (number > 300)
      process.stdout.write(`${String(read)} of ${String(all)} read; faults: ${JSON.stringify([...faults])}\n`);
    expect(read / all).toBeGreaterThan(0.3);
  });
});
