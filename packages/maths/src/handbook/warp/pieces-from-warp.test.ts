import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches, percentLost, yards } from "../../units/index.js";
import { piecesFromWarp, warpLength, wovenLength } from "./index.js";

describe("pieces still possible", () => {
  const losses = { loomToFinished: percentLost(10), takeUp: percentLost(8) };
  const size = { finishedLength: inches(16), hemEachEnd: inches("0.75") };

  // 180 − 27 = 153 in, of which 92 % are 140.76 in of cloth: five of 27 in, and 5.76 in over.
  cited("five yards left, 27 inches of waste, pieces of 27 inches", byHand(commonPractice, "5"), piecesFromWarp, [
    { warpLeft: yards(5), loomWaste: inches(27), takeUp: percentLost(8), wovenLength: inches(27) },
  ]);

  it("are just those a warp was made for, and one fewer from any shorter warp", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 80 }), (pieces, waste) => {
        const loomWaste = inches(waste);
        const warpLeft = warpLength({ pieces, ...size, ...losses, loomWaste });
        const woven = wovenLength({ ...size, loomToFinished: losses.loomToFinished });
        const left = { loomWaste, takeUp: losses.takeUp, wovenLength: woven };
        expect(piecesFromWarp({ warpLeft, ...left })).toBe(pieces);
        const shorter = inches(warpLeft.in(inches) - 0.01);
        expect(piecesFromWarp({ warpLeft: shorter, ...left })).toBe(pieces - 1);
      }),
    );
  });

  it("are none where only the waste is left, and refused where less than that is", () => {
    const given = { loomWaste: yards(1), takeUp: losses.takeUp, wovenLength: inches(19) };
    expect(piecesFromWarp({ warpLeft: yards(1), ...given })).toBe(0);
    expect(() => piecesFromWarp({ warpLeft: inches(30), ...given })).toThrow("clothLeft of 0 or more");
  });
});
