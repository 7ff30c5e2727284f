import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { taylor1909 } from "#ci/sources.js";
import { picksPerInch, pounds } from "../../units/index.js";
import { picksForWeight } from "./picks-for-weight.js";

describe("picks for another weight", () => {
  cited(
    "a cloth of 10 lb with 93 threads to the inch made to weigh 15, the weft as the warp",
    published(taylor1909, "ch. XII, pp. 343-344", "62", "62"),
    picksForWeight,
    [{ picks: picksPerInch(93), mass: pounds(10), newMass: pounds(15) }],
    picksPerInch,
  );

  it("are those there are where the weight stays, and as many times fewer as it grows", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 1, max: 8 }), (many, times) => {
        const given = { picks: picksPerInch(many * times), mass: pounds(2) };
        expect(picksForWeight({ ...given, newMass: pounds(2) }).in(picksPerInch)).toBe(many * times);
        expect(picksForWeight({ ...given, newMass: pounds(2 * times) }).in(picksPerInch)).toBe(many);
      }),
    );
  });

  it("are refused for a piece of no weight", () => {
    const given = { picks: picksPerInch(20), mass: pounds(2), newMass: pounds(0) };
    expect(() => picksForWeight(given)).toThrow("more than 0");
  });
});
