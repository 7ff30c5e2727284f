import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import type { Unit } from "../../engine/quantity/index.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  allFiberArts,
  brooks1892,
  commonPractice,
  horsensVaevekreds,
  osterkamp,
  schoolOfWeaving,
  starweaving,
  sunnano,
  weaveAway,
} from "../../sources/index.js";
import { centimetres, inches, metres, percentAdded, percentLost, yards } from "../../units/index.js";
import { warpLengthByAdding } from "./warp-length-by-adding.js";
import type { WarpLengthByAddingInput } from "./warp-length-by-adding.js";
import { warpLengthByBothRules } from "./warp-length-by-both-rules.js";
import { warpLengthForSizes } from "./warp-length-for-sizes.js";
import type { WarpLengthForSizesInput } from "./warp-length-for-sizes.js";
import { warpLength } from "./warp-length.js";

const uncounted = (source: Citation["source"], at: string, exact: string): Citation => ({
  ...published(source, at, "", exact),
  status: source === commonPractice ? "common practice, no source" : "read",
});

describe("length of warp by adding", () => {
  const one = { pieces: 1, hemEachEnd: inches(0), takeUp: percentAdded(0), loomWaste: inches(0) };
  const towel = { finishedLength: centimetres(70), hemEachEnd: centimetres(2), shrinkage: percentAdded(10) };
  const rows: readonly (readonly [title: string, Citation, WarpLengthByAddingInput, Unit<"length">])[] = [
    [
      "three inches wanted and 5 %",
      published(osterkamp, "whole text", "3.15", "3.15"),
      { ...one, finishedLength: inches(3), shrinkage: percentAdded(5) },
      inches,
    ],
    [
      "five inches wanted and 5 %",
      published(osterkamp, "whole text", "5.25", "5.25"),
      { ...one, finishedLength: inches(5), shrinkage: percentAdded(5) },
      inches,
    ],
    [
      "one runner of 36 inches with 2-inch hems, 15 % and a yard of waste",
      published(allFiberArts, "whole page", "2.3", "41/18"),
      { ...one, finishedLength: inches(36), hemEachEnd: inches(2), shrinkage: percentAdded(15), loomWaste: yards(1) },
      yards,
    ],
    [
      "one towel of 70 cm, 2 cm turned under at each end, and 10 %",
      published(horsensVaevekreds, "whole page", "81.4", "81.4"),
      { ...one, ...towel },
      centimetres,
    ],
    [
      "three such towels",
      published(horsensVaevekreds, "whole page", "244.2", "244.2"),
      { ...one, ...towel, pieces: 3 },
      centimetres,
    ],
    [
      "two mats of 2 m and 15 %, fringes of 0.4 m and 0.6 m of waste, which shrink nothing",
      published(sunnano, "whole page", "5.6", "5.6"),
      { ...one, pieces: 2, finishedLength: metres(2), shrinkage: percentAdded(15), loomWaste: metres(1) },
      metres,
    ],
    [
      "a towel of 28 inches, 12 % and 9 %, the parts not rounded",
      uncounted(schoolOfWeaving, "the question", "33.88"),
      { ...one, finishedLength: inches(28), shrinkage: percentAdded(12), takeUp: percentAdded(9) },
      inches,
    ],
  ];
  for (const [title, citation, input, unit] of rows) cited(title, citation, warpLengthByAdding, [input], unit);
});

describe("length of warp by both rules", () => {
  const napkins = {
    pieces: 8,
    finishedLength: inches(21),
    hemEachEnd: inches(1),
    loomToFinished: percentLost(10),
    takeUp: percentLost(8),
    loomWaste: inches(30),
  };

  it("sets 252 2/9 in beside 247.12 in, 5.10 in less", () => {
    const both = warpLengthByBothRules(napkins);
    expect(both.dividing.in(inches)).toBeCloseTo(2270 / 9, 12);
    expect(both.adding.in(inches)).toBe(247.12);
    expect(both.difference.in(inches)).toBeCloseTo(2270 / 9 - 247.12, 12);
    const [dividing, adding] = both.steps;
    expect([dividing.calculation(dividing.input), adding.calculation(adding.input)]).toEqual([
      both.dividing,
      both.adding,
    ]);
  });

  it("agree where nothing is lost, and else adding is the shorter", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }), (shrinks, takesUp) => {
        const input = { ...napkins, loomToFinished: percentLost(shrinks), takeUp: percentLost(takesUp) };
        const { difference } = warpLengthByBothRules(input);
        if (shrinks + takesUp === 0) expect(difference.in(inches)).toBe(0);
        else expect(difference.in(inches)).toBeGreaterThan(0);
      }),
    );
  });

  it("are refused together", () => {
    expect(() => warpLengthByBothRules({ ...napkins, takeUp: percentAdded(8) as never })).toThrow(
      /warpLength\(.*takeUp/u,
    );
  });
});

describe("length of warp for several sizes", () => {
  const nothing = {
    sample: inches(0),
    loomToFinished: percentLost(0),
    takeUp: percentLost(0),
    loomWaste: inches(0),
  };
  const none = [inches(0)];
  const rows: readonly (readonly [title: string, Citation, WarpLengthForSizesInput, Unit<"length">])[] = [
    [
      "a cloth of 55 inches with fringes of 5",
      published(starweaving, "steps 1-2", "65", "65"),
      { ...nothing, pieces: [1], finishedLength: [inches(55)], hemEachEnd: none, fringeEachEnd: [inches(5)] },
      inches,
    ],
    [
      "a runner of 76 inches with fringes of 4, and six mats of 17",
      published(weaveAway, "Linda's placemats", "at least 5", "31/6"),
      {
        ...nothing,
        pieces: [1, 6],
        finishedLength: [inches(76), inches(17)],
        hemEachEnd: [inches(0), inches(0)],
        fringeEachEnd: [inches(4), inches(0)],
      },
      yards,
    ],
    [
      "four double scarves of five yards, two in each",
      published(brooks1892, "p. 48 of the copy", "40", "40"),
      { ...nothing, pieces: [8], finishedLength: [yards(5)], hemEachEnd: none, fringeEachEnd: none },
      yards,
    ],
    [
      // 4 × 22 + 2 × 32 = 152, ÷ 0.8 = 190, + 10 = 200, ÷ 0.9 = 222 2/9, + 2 × 2 × 3 = 12, + 30
      "four napkins, two runners with fringes, and a sample",
      uncounted(commonPractice, "worked by hand", "2378/9"),
      {
        pieces: [4, 2],
        finishedLength: [inches(20), inches(32)],
        hemEachEnd: [inches(1), inches(0)],
        fringeEachEnd: [inches(0), inches(3)],
        sample: inches(10),
        loomToFinished: percentLost(20),
        takeUp: percentLost(10),
        loomWaste: inches(30),
      },
      inches,
    ],
  ];
  for (const [title, citation, input, unit] of rows) cited(title, citation, warpLengthForSizes, [input], unit);

  it("is the plain warp length where there is one size, no fringe and no sample", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: 60 }), (pieces, lost) => {
        const shared = { loomToFinished: percentLost(lost), takeUp: percentLost(7), loomWaste: inches(28) };
        const plain = warpLength({ ...shared, pieces, finishedLength: inches(24), hemEachEnd: inches(1) });
        const sizes = warpLengthForSizes({
          ...shared,
          ...{ pieces: [pieces], finishedLength: [inches(24)], hemEachEnd: [inches(1)] },
          ...{ fringeEachEnd: [inches(0)], sample: inches(0) },
        });
        expect(sizes.in(inches)).toBeCloseTo(plain.in(inches), 10);
      }),
    );
  });

  it("is refused where the lists do not go together", () => {
    const input = { ...nothing, pieces: [1, 2], finishedLength: [inches(20)], hemEachEnd: none, fringeEachEnd: none };
    expect(() => warpLengthForSizes(input)).toThrow(/a list of 2/u);
    expect(() => warpLengthForSizes({ ...input, pieces: [] })).toThrow(QuantityError);
  });
});
