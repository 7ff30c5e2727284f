import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { faultsOf } from "#ci/faults-of.js";
import { commonPractice } from "#ci/sources.js";
import { centimetres, inches } from "../../units/index.js";
import { joiningOrThreading } from "./joining-or-threading.js";

describe("joining or threading afresh", () => {
  const hours = { knotsPerHour: 200, otherHoursJoining: 1, endsPerHourThreading: 180, otherHoursThreading: 0.5 };
  const dearer = { ends: 360, ...hours, newWarpSpared: inches(18), oldWarpGivenUp: inches(8) };

  // 360 ÷ 180 + 0.5 = 2.5 hours against 360 ÷ 200 + 1 = 2.8; 360 × (18 − 8) in.
  cited(
    "hours saved by joining 360 ends at 200 knots an hour",
    byHand(commonPractice, "-0.3"),
    joiningOrThreading,
    [dearer],
    "hoursSaved",
  );
  cited(
    "yarn saved in 360 ends, 18 in spared and 8 in given up",
    byHand(commonPractice, "3600"),
    joiningOrThreading,
    [dearer],
    ["yarnSaved", inches],
  );

  it("may cost hours and still save yarn, or the other way", () => {
    expect(joiningOrThreading(dearer).says).toContain(
      "0.3 hours more than threading afresh and saves 10 in of every end",
    );
    const dear = joiningOrThreading({ ...dearer, newWarpSpared: inches(8), oldWarpGivenUp: inches(18) });
    expect(dear.yarnSaved.in(inches)).toBe(-3600);
    expect(dear.says).toContain("saves no yarn");
  });

  it("saves as much as threading takes longer, its tying being the step that is given, whatever the unit of the warp", () => {
    const [ends, pace] = [fc.integer({ min: 1, max: 3000 }), fc.integer({ min: 1, max: 400 })];
    const length = fc.integer({ min: 0, max: 100 });
    fc.assert(
      fc.property(ends, pace, pace, length, length, (number, knotsPerHour, endsPerHourThreading, spared, given) => {
        const speeds = { ...hours, ends: number, knotsPerHour, endsPerHourThreading };
        const found = joiningOrThreading({ ...speeds, newWarpSpared: inches(spared), oldWarpGivenUp: inches(given) });
        expect(found.hoursSaved).toBe(found.hoursThreading - found.hoursJoining);
        expect(found.steps.map(({ calculation, input }) => calculation(input))).toEqual([number / knotsPerHour]);
        expect(found.hoursJoining).toBe(number / knotsPerHour + 1);
        expect(found.yarnSaved.in(inches)).toBe(number * (spared - given));
        const back = joiningOrThreading({
          ...speeds,
          newWarpSpared: centimetres(given * 2.54),
          oldWarpGivenUp: centimetres(spared * 2.54),
        });
        expect(back.yarnSaved.in(inches)).toBeCloseTo(-found.yarnSaved.in(inches), 6);
      }),
    );
  });

  it("are even where both take the same and as much is given up as spared", () => {
    const even = { ...dearer, endsPerHourThreading: 200, otherHoursThreading: 1, newWarpSpared: inches(8) };
    const found = joiningOrThreading(even);
    expect([found.hoursSaved, found.yarnSaved.in(inches)]).toEqual([0, 0]);
    expect(found.says).toContain("0.0 hours fewer than threading afresh and saves no yarn");
  });

  it("are refused for no ends, no pace, and what is not told", () => {
    expect(codesOf(joiningOrThreading, { ...dearer, knotsPerHour: 0 })).toEqual(["out-of-range knotsPerHour"]);
    expect(codesOf(joiningOrThreading, { ...dearer, newWarpSpared: inches(-1) })).toEqual([
      "out-of-range newWarpSpared",
    ]);
    const fields = Object.keys(dearer).slice(1);
    expect(codesOf(joiningOrThreading, { ends: 0 })).toEqual([
      "out-of-range ends",
      ...fields.map((field) => `missing ${field}`),
    ]);
    expect(faultsOf(joiningOrThreading, { ends: 0 })).toEqual([
      "joiningOrThreading({ ends }): a whole number of ends, 1 or more",
      "joiningOrThreading({ knotsPerHour }): a number",
      "joiningOrThreading({ otherHoursJoining }): a number",
      "joiningOrThreading({ endsPerHourThreading }): a number",
      "joiningOrThreading({ otherHoursThreading }): a number",
      "joiningOrThreading({ newWarpSpared }): a length",
      "joiningOrThreading({ oldWarpGivenUp }): a length",
    ]);
  });
});
