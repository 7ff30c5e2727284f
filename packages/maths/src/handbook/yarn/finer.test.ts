import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cottonCount, inches, tex, worstedCount } from "../../units/index.js";
import { coarser, finer } from "./finer.js";

describe("finer and coarser", () => {
  it("know that 30s cotton is finer than 30 tex and coarser than 15 tex", () => {
    expect(finer(cottonCount(30), tex(30))).toBe(true);
    expect(coarser(cottonCount(30), tex(15))).toBe(true);
  });

  it("hold neither of 20s cotton and 30s worsted for the finer", () => {
    expect(finer(cottonCount(20), worstedCount(30))).toBe(false);
    expect(coarser(cottonCount(20), worstedCount(30))).toBe(false);
  });

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

  it("refuse what is no count", () => {
    expect(() => finer(inches(3) as never, tex(30))).toThrow(
      "finer({ a }): expected a yarn count, received length 3 inches",
    );
    expect(() => coarser(tex(30), tex(0))).toThrow("coarser({ b }): expected a count above zero");
  });
});
