import { grams, inches, percentAdded } from "@thrum/maths";
import { describe, expectTypeOf, it } from "vitest";
import type { Job } from "./job.js";
import { readJob } from "./read-job.js";

type Pieces = Job["pieces"];

describe("the job of a plan", () => {
  it("takes lengths for lengths and losses for losses", () => {
    expectTypeOf(inches(16)).toExtend<Pieces["finishedLength"]>();
    // @ts-expect-error [ts2322]: a mass is no length
    const heavy: Pieces["finishedLength"] = grams(16);
    // @ts-expect-error [ts2322]: what is added is no loss
    const added: Pieces["loomToFinished"] = percentAdded(10);
    expectTypeOf([heavy, added]).toBeArray();
  });

  it("is there only when the reading went well", () => {
    const reading = readJob("");
    // @ts-expect-error [ts2339]: there may be faults instead
    expectTypeOf(reading.job).toBeAny();
    if (reading.ok) expectTypeOf(reading.job).toEqualTypeOf<Job>();
  });
});
