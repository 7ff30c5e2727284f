import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice } from "#ci/sources.js";
import { centimetres, inches, percentLost, yards } from "../../units/index.js";
import { piecesAllowed } from "../yarn/pieces-allowed.js";
import { yarnMore } from "../yarn/yarn-more.js";
import { hemAtLoom } from "./hem-at-loom.js";
import { warpForOrder } from "./warp-for-order.js";
import { warpOfWoven } from "./warp-of-woven.js";
import { wovenInOrder } from "./woven-in-order.js";
import { wovenLength } from "./woven-length.js";
import { yarnForEnds } from "./yarn-for-ends.js";

describe("the woven length of a piece", () => {
  // 21 + 2 × 1 = 23 in, ÷ 0.9.
  cited(
    "a napkin of 21 inches with hems of an inch that loses a tenth",
    byHand(commonPractice, "230/9"),
    wovenLength,
    [{ finishedLength: inches(21), hemEachEnd: inches(1), loomToFinished: percentLost(10) }],
    inches,
  );
});

describe("a hem at the loom", () => {
  it("is half of what hems add to the woven length of a piece", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 90 }), (hem, lost) => {
        const given = { hemEachEnd: centimetres(hem), loomToFinished: percentLost(lost) };
        const bare = wovenLength({ ...given, finishedLength: centimetres(50), hemEachEnd: centimetres(0) });
        const hemmed = wovenLength({ ...given, finishedLength: centimetres(50) });
        expect(hemmed.in(centimetres) - bare.in(centimetres)).toBeCloseTo(2 * hemAtLoom(given).in(centimetres), 6);
      }),
    );
  });
});

describe("pieces still possible", () => {
  const losses = { loomToFinished: percentLost(10), takeUp: percentLost(8) };
  const size = { finishedLength: inches(16), hemEachEnd: inches("0.75") };
  it("each as long on the loom as its hems and losses ask, by hand (16 + 1 1/2) ÷ 0.9", () => {
    const woven = wovenLength({ ...size, loomToFinished: losses.loomToFinished });
    expect(woven.in(inches)).toBeCloseTo(19.4444444444, 9);
  });
});

describe("pieces a yarn allows", () => {
  // 64 ends; a cover is (33 + 2 × 1) ÷ 0.9 ÷ 0.94 in of warp, the waste 9 in: ((430 × 36 ÷ 64 − 9) × 0.846) ÷ 35.
  it("are 788049/140000 covers of 430 yards, whichever number was reckoned first", () => {
    const size = { finishedLength: inches(33), hemEachEnd: inches(1), loomToFinished: percentLost(10) };
    const common = { takeUp: percentLost(6), fringes: inches(0) };
    const warpMore = warpOfWoven({ ...common, woven: wovenLength(size) });
    const oneMore = yarnMore({ ends: 64, warpMore, wefts: [] });
    for (const pieces of [1, 5, 9]) {
      const woven = wovenInOrder({ number: [pieces], wovenLength: [wovenLength(size)] });
      const warp = warpForOrder({ ...common, woven, loomWaste: inches(9) });
      const needed = yarnForEnds({ ends: 64, warpLength: warp });
      const allowed = piecesAllowed({ pieces, onHand: yards(430), needed, oneMore });
      expect(Math.abs(allowed - 788049 / 140000)).toBeLessThan(1e-14);
    }
  });
});

describe("the limits of woven length", () => {
  limits(
    wovenLength,
    [
      "is the piece itself without hems and losses",
      { finishedLength: inches(21), hemEachEnd: inches(0), loomToFinished: percentLost(0) },
      21,
      inches,
    ],
    { finishedLength: inches(0), hemEachEnd: inches(-1), loomToFinished: percentLost(100) },
  );
});
