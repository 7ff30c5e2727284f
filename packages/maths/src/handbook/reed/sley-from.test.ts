import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { sleyFrom, sleyReading } from "./sley-from.js";

describe("a sleying order in writing", () => {
  // One dent of two ends, then two dents of one.
  cited("dents of the sleying order 2-1-1", byHand(commonPractice, "1,2"), sleyFrom, ["2-1-1"], "dents");
  it("is had back dent by dent, no two neighbours of one number apart", () => {
    const written = fc.array(fc.integer({ min: 0, max: 99 }), { minLength: 1, maxLength: 100 });
    fc.assert(
      fc.property(written, (order) => {
        fc.pre(order.some((one) => one > 0));
        const { dents, endsPerDent } = sleyFrom(order.join("-"));
        expect(dents.flatMap((many, at) => Array.from({ length: many }, () => endsPerDent[at]))).toEqual(order);
        expect(endsPerDent.filter((one, at) => one === endsPerDent[at - 1])).toEqual([]);
      }),
    );
  });
  it("is one of a hundred dents and 400 letters at the most", () => {
    const ones = (many: number): string => Array.from({ length: many }, () => "1").join("-");
    expect(sleyFrom(ones(100)).dents).toEqual([100]);
    expect(codesOf(sleyFrom, ones(101))).toEqual(["unreadable order"]);
    expect(sleyFrom(`1${" ".repeat(399)}`).dents).toEqual([1]);
    expect(() => sleyFrom(`1${" ".repeat(400)}`)).toThrow("Give the order as text");
  });
  it("counts neighbouring dents of one number together", () => {
    expect(sleyFrom("2-1-1")).toEqual({ dents: [1, 2], endsPerDent: [2, 1] });
    expect(sleyFrom(" 0 - 1 - 1 ")).toEqual({ dents: [1, 2], endsPerDent: [0, 1] });
    expect(sleyFrom("12")).toEqual({ dents: [1], endsPerDent: [12] });
  });
  it("is refused where it is no order", () => {
    for (const text of ["", "2-", "2,1", "-1", "1--2", "0-0", "1.5-1", "a-b", "1-2".repeat(200), "123"]) {
      expect(codesOf(sleyFrom, text), text).toEqual(["unreadable order"]);
    }
    expect(() => sleyFrom(2 as never)).toThrow("Give the order as text");
    expect(sleyReading("2-1")).toMatchObject({ ok: true });
    expect(sleyReading("2,1").ok).toBe(false);
  });
});
