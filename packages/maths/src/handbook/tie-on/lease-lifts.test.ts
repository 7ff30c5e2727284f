import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leaseLifts } from "./lease-lifts.js";

describe("a lease by two lifts", () => {
  const lifts = (shafts: number, ...threading: number[]): unknown =>
    leaseLifts({ shafts, parts: [{ threading, times: 5 }] }).lifts;
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
  it("is there where shafts take turns in an order of their own", () => {
    expect(lifts(8, 1, 5, 2, 6, 3, 7, 4, 8)).toEqual([
      [1, 2, 3, 4],
      [5, 6, 7, 8],
    ]);
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
});
