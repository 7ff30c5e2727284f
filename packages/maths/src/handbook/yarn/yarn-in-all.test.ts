import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited, published } from "#ci/cited.js";
import { commonPractice, weftHanded2010 } from "#ci/sources.js";
import { miles, yards } from "../../units/index.js";
import { explain } from "../../engine/working/index.js";
import { yarnInAll } from "./yarn-in-all.js";

describe("yarn in warp and wefts", () => {
  cited(
    "of 1800 yards of warp and two wefts",
    byHand(commonPractice, "2650"),
    yarnInAll,
    [{ warp: yards(1800), wefts: [yards(700), yards(150)] }],
    yards,
  );
  cited(
    "of ten yards of 45 inches at 10 by 10, in miles",
    published(weftHanded2010, "14 April 2010", "5.1136", "9000/1760"),
    yarnInAll,
    [{ warp: yards(4500), wefts: [yards(4500)] }],
    miles,
  );
  cited("of a warp and no weft", byHand(commonPractice, "1800"), yarnInAll, [{ warp: yards(1800), wefts: [] }], yards);

  it("prints a working that says none where there is no weft", () => {
    const { inputs, steps } = explain(yarnInAll, { warp: yards(1800), wefts: [] });
    expect(inputs[1]).toMatchObject({ name: "wefts", value: "none" });
    expect(steps[0]?.numbers).toBe("1800 yd + 0");
  });
  it("is the sum of its parts, whatever their order", () => {
    fc.assert(
      fc.property(fc.nat(900), fc.array(fc.nat(900), { maxLength: 5 }), (warp, wefts) => {
        const all = yarnInAll({ warp: yards(warp), wefts: wefts.map((one) => yards(one)) });
        expect(all.in(yards)).toBe(wefts.reduce((total, one) => total + one, warp));
      }),
    );
  });
  it("is refused where a weft is less than nothing, by its place", () => {
    expect(() => yarnInAll({ warp: yards(1), wefts: [yards(1), yards(-1)] })).toThrow("wefts[1] })");
  });
});
