import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { brown1923, warpingPlan2015 } from "#ci/sources.js";
import { splitOverBeams } from "./split-over-beams.js";

describe("a warp shared out", () => {
  cited(
    "150 face threads of elastic webbing on two warps",
    published(brown1923, "p. 33", "75", "75,75"),
    splitOverBeams,
    [{ ends: 150, mostPerBeam: 75 }],
    "endsOnEach",
  );
});

describe("a warp over several beams", () => {
  cited(
    "4320 ends on seven beams",
    published(warpingPlan2015, "example 1", "6 × 617 and 1 × 618", "617,617,617,617,617,617,618"),
    splitOverBeams,
    [{ ends: 4320, mostPerBeam: 640 }],
    "endsOnEach",
  );
  cited(
    "four beams of 1080",
    published(warpingPlan2015, "example 1", "4320", "1080,1080,1080,1080"),
    splitOverBeams,
    [{ ends: 4320, mostPerBeam: 1080 }],
    "endsOnEach",
  );
  it("takes as few beams as hold it, and shares out what is over one end to a beam", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 1, max: 900 }), (ends, mostPerBeam) => {
        const { beams, endsOnEach } = splitOverBeams({ ends, mostPerBeam });
        expect(endsOnEach.reduce((total, one) => total + one, 0)).toBe(ends);
        expect(endsOnEach).toHaveLength(beams);
        expect(Math.max(...endsOnEach)).toBeLessThanOrEqual(mostPerBeam);
        expect(Math.max(...endsOnEach) - Math.min(...endsOnEach)).toBeLessThanOrEqual(1);
        expect((beams - 1) * mostPerBeam).toBeLessThan(ends);
      }),
    );
  });
  it("is one beam where it holds all the ends, and two for one end more", () => {
    expect(splitOverBeams({ ends: 640, mostPerBeam: 640 })).toEqual({ beams: 1, endsOnEach: [640] });
    expect(splitOverBeams({ ends: 641, mostPerBeam: 640 })).toEqual({ beams: 2, endsOnEach: [320, 321] });
    expect(splitOverBeams({ ends: 1, mostPerBeam: 1 })).toEqual({ beams: 1, endsOnEach: [1] });
    expect(codesOf(splitOverBeams, { ends: 1_000_000, mostPerBeam: 500_000 })).toEqual([]);
  });
  it("is refused for no ends, for more than a million and for beams that hold none", () => {
    expect(codesOf(splitOverBeams, { ends: 0, mostPerBeam: 0 })).toEqual([
      "out-of-range ends",
      "out-of-range mostPerBeam",
    ]);
    expect(codesOf(splitOverBeams, { ends: 1_000_001, mostPerBeam: 10 })).toEqual(["out-of-range ends"]);
    expect(codesOf(splitOverBeams, { ends: 10, mostPerBeam: 2.5 })).toEqual(["not-whole mostPerBeam"]);
    expect(codesOf(splitOverBeams, { ends: 10 })).toEqual(["missing mostPerBeam"]);
  });
});
