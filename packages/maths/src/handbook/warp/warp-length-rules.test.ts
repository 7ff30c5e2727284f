import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inches, percentLost } from "../../units/index.js";
import { warpLengthForSizes } from "./warp-length-for-sizes.js";
import { warpLength } from "./warp-length.js";

describe("length of warp for several sizes", () => {
  it("is the plain warp length where there is one size, no fringe and no sample", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: 60 }), (pieces, lost) => {
        const shared = { loomToFinished: percentLost(lost), takeUp: percentLost(7), loomWaste: inches(28) };
        const plain = warpLength({ ...shared, pieces, finishedLength: inches(24), hemEachEnd: inches(1) });
        const sizes = warpLengthForSizes({
          ...shared,
          pieces: [pieces],
          finishedLength: [inches(24)],
          hemEachEnd: [inches(1)],
          fringeEachEnd: [inches(0)],
          sample: inches(0),
        });
        expect(sizes.in(inches)).toBeCloseTo(plain.in(inches), 10);
      }),
    );
  });
});
