import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice } from "#ci/sources.js";
import { yards } from "../../units/index.js";
import { yarnForWarp } from "./yarn-for-warp.js";

describe("yarn left for the warp", () => {
  cited(
    "of 840 yards with two wefts set aside",
    byHand(commonPractice, "700"),
    yarnForWarp,
    [{ yarn: yards(840), wefts: [yards(90), yards(50)] }],
    yards,
  );
  cited("of 840 yards with none", byHand(commonPractice, "840"), yarnForWarp, [{ yarn: yards(840), wefts: [] }], yards);

  it("makes up the yarn with the wefts", () => {
    fc.assert(
      fc.property(fc.nat(900), fc.array(fc.nat(900), { maxLength: 5 }), (left, wefts) => {
        const yarn = yards(wefts.reduce((total, one) => total + one, left));
        expect(yarnForWarp({ yarn, wefts: wefts.map((one) => yards(one)) }).in(yards)).toBe(left);
      }),
    );
  });
  it("is refused where the wefts take more than there is", () => {
    expect(() => yarnForWarp({ yarn: yards(10), wefts: [yards(6), yards(5)] })).toThrow("0 or more");
  });
});

describe("the limits of yarn for warp", () => {
  limits(yarnForWarp, ["is all of the yarn where no weft is wound", { yarn: yards(500), wefts: [] }, 500, yards], {
    yarn: yards(-1),
    wefts: [yards(-1)],
  });
});
