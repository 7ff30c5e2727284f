import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import {
  allFiberArts,
  commonPractice,
  horsensVaevekreds,
  osterkampShrinkage,
  schoolOfWeaving,
  sunnano,
} from "#ci/sources.js";
import type { Unit } from "../../engine/quantity/index.js";
import { centimetres, inches, metres, percentAdded, yards } from "../../units/index.js";
import type { WarpLengthByAddingInput } from "./warp-length-by-adding.js";
import { warpLengthByAdding } from "./warp-length-by-adding.js";

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
      published(osterkampShrinkage, "whole text", "3.15", "3.15"),
      { ...one, finishedLength: inches(3), shrinkage: percentAdded(5) },
      inches,
    ],
    [
      "five inches wanted and 5 %",
      published(osterkampShrinkage, "whole text", "5.25", "5.25"),
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
      "three towels of 70 cm, 2 cm turned under at each end, and 10 %",
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

describe("the limits of warp length by adding", () => {
  limits(
    warpLengthByAdding,
    [
      "of one piece to which nothing is added is the piece",
      {
        pieces: 1,
        finishedLength: inches(21),
        hemEachEnd: inches(0),
        shrinkage: percentAdded(0),
        takeUp: percentAdded(0),
        loomWaste: inches(0),
      },
      21,
      inches,
    ],
    {
      pieces: 0,
      finishedLength: inches(0),
      hemEachEnd: inches(-1),
      shrinkage: percentAdded(-1),
      takeUp: percentAdded(-1),
      loomWaste: inches(-1),
    },
  );
});
