import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { centimetres, endsPerCentimetre, endsPerInch, inches } from "../../units/index.js";
import { endsUpTo } from "./ends-up-to.js";

describe("ends up to a mark", () => {
  cited("30 cm at 4.1 ends", byHand(commonPractice, "123"), endsUpTo, [
    { length: centimetres(30), sett: endsPerCentimetre("4.1") },
  ]);
  cited("60 cm at 4.1 ends", byHand(commonPractice, "246"), endsUpTo, [
    { length: centimetres(60), sett: endsPerCentimetre("4.1") },
  ]);
  cited("a hair short of 30 cm", byHand(commonPractice, "122"), endsUpTo, [
    { length: centimetres("29.99"), sett: endsPerCentimetre("4.1") },
  ]);

  it("never reach past it, and one more would", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9000 }), fc.integer({ min: 1, max: 400 }), (tenths, sett) => {
        const ends = endsUpTo({ length: inches(tenths / 10), sett: endsPerInch(sett / 10) });
        expect(ends * 100).toBeLessThanOrEqual(tenths * sett);
        expect((ends + 1) * 100).toBeGreaterThan(tenths * sett);
      }),
    );
  });
  it("are none at end 1, and refused for a sett of nothing", () => {
    expect(endsUpTo({ length: inches(0), sett: endsPerInch(20) })).toBe(0);
    expect(() => endsUpTo({ length: inches(3), sett: endsPerInch(0) })).toThrow("more than 0");
  });
});
