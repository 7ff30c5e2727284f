import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { cottonCount, inches, tex, worstedCount } from "../../units/index.js";
import { coarser, finer } from "./finer.js";

describe("finer and coarser", () => {
  // 590.541… ÷ 30 = 19.68… tex; 20 × 840 = 30 × 560 = 16800 yd to the pound.
  cited("30s cotton is finer than 30 tex", byHand(commonPractice, "true"), finer, [cottonCount(30), tex(30)]);
  cited("30s cotton is coarser than 15 tex", byHand(commonPractice, "true"), coarser, [cottonCount(30), tex(15)]);
  cited("20s cotton is no finer than 30s worsted", byHand(commonPractice, "false"), finer, [
    cottonCount(20),
    worstedCount(30),
  ]);
  cited("20s cotton is no coarser than 30s worsted", byHand(commonPractice, "false"), coarser, [
    cottonCount(20),
    worstedCount(30),
  ]);

  it("follow the numbers up in an indirect system and down in a direct one", () => {
    const number = fc.integer({ min: 1, max: 500 });
    fc.assert(
      fc.property(number, number, (a, b) => {
        expect(finer(cottonCount(a), cottonCount(b))).toBe(a > b);
        expect(finer(tex(a), tex(b))).toBe(a < b);
        expect(coarser(tex(a), tex(b))).toBe(finer(tex(b), tex(a)));
      }),
    );
  });

  it("tell counts apart at the twentieth digit, and take none for finer than what is as fine", () => {
    expect(finer(tex("29.9999999999999999999"), tex(30))).toBe(true);
    expect([finer(tex(30), tex("30.0")), coarser(tex(30), tex("30.0"))]).toEqual([false, false]);
  });

  it.each([
    ["finer", finer],
    ["coarser", coarser],
  ] as const)("refuse what is no count above zero, on either side: %s", (name, by) => {
    const of = (a: unknown, b: unknown): readonly string[] => codesOf(() => by(a as never, b as never), null);
    expect(of(inches(3), tex(30))).toEqual(["wrong-kind a"]);
    expect(of(tex(30), { ...tex(30) })).toEqual(["wrong-kind b"]);
    expect(of(tex(30), tex(0))).toEqual(["out-of-range b"]);
    expect(of(tex(-1), tex(30))).toEqual(["out-of-range a"]);
    expect(() => by(inches(3) as never, tex(30))).toThrow(
      `${name}({ a }): expected a yarn count, received length 3 inches`,
    );
  });
});
