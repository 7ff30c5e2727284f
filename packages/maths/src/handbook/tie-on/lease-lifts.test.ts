import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { faultsOf } from "#ci/faults-of.js";
import { commonPractice } from "#ci/sources.js";
import { leaseLifts } from "./lease-lifts.js";

describe("a lease by two lifts", () => {
  const lifts = (shafts: number, ...threading: number[]): unknown =>
    leaseLifts({ shafts, parts: [{ threading, times: 5 }] }).lifts;
  // Ends 1, 3, 5, 7 rise on shafts 1, 2, 3, 4 and ends 2, 4, 6, 8 on 5, 6, 7, 8.
  const turns = { shafts: 8, parts: [{ threading: [1, 5, 2, 6, 3, 7, 4, 8], times: 5 }] };
  cited(
    "shafts of the first lift of a threading 1, 5, 2, 6, 3, 7, 4, 8",
    byHand(commonPractice, "1,2,3,4"),
    leaseLifts,
    [turns],
    "lifts.0",
  );

  it("is there in a straight draw, a point draw and a rosepath, odd shafts against even", () => {
    const oddAndEven = [
      [1, 3],
      [2, 4],
    ];
    expect(lifts(4, 1, 2, 3, 4)).toEqual(oddAndEven);
    expect(lifts(4, 1, 2, 3, 4, 3, 2)).toEqual(oddAndEven);
    expect(lifts(4, 4, 1, 2, 3)).toEqual([
      [2, 4],
      [1, 3],
    ]);
  });
  it("needs one lift for a single end, and is forbidden to two ends on one shaft", () => {
    const ends = (times: number): unknown => leaseLifts({ shafts: 1, parts: [{ threading: [1], times }] });
    expect(ends(1)).toMatchObject({ lifts: [[1], []], together: [], says: "There are no two ends to part." });
    expect(ends(2)).toMatchObject({ lifts: null, together: [[1, 2]] });
  });
  it("is forbidden by neighbours on one shaft, with the ends named", () => {
    const found = leaseLifts({ shafts: 4, parts: [{ threading: [1, 2, 2, 3], times: 2 }] });
    expect(found.lifts).toBeNull();
    expect(found.together).toEqual([
      [2, 3],
      [4, 5],
      [6, 7],
    ]);
    expect(found.says).toContain("No two lifts part ends 2 and 3 and 2 more such places");
  });
  it("is forbidden in a repeat of three shafts, which come round odd", () => {
    expect(leaseLifts({ shafts: 3, parts: [{ threading: [1, 2, 3], times: 40 }] }).lifts).toBeNull();
  });
  it("found for any threading, parts every pair of neighbours", () => {
    const threading = fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(threading, (order) => {
        const { lifts: found, together } = leaseLifts({ shafts: 6, parts: [{ threading: order, times: 1 }] });
        expect(found === null).toBe(together.length > 0);
        if (found === null) return;
        const [first, second] = found;
        order.forEach((shaft, at) => {
          expect((at % 2 === 0 ? first : second).includes(shaft)).toBe(true);
        });
      }),
    );
  });
  it("is refused for a shaft the loom has not, and for what is not told", () => {
    const parts = [{ threading: [1, 5], times: -1 }];
    expect(codesOf(leaseLifts, { shafts: 4, parts })).toEqual([
      "out-of-range parts.0.threading.1",
      "out-of-range parts.0.times",
    ]);
    expect(codesOf(leaseLifts, {})).toEqual(["missing shafts", "missing parts"]);
    expect(faultsOf(leaseLifts, {})).toEqual([
      "leaseLifts({ shafts }): a whole number of shafts",
      "leaseLifts({ parts }): a list of the parts of a threading",
    ]);
  });
});
