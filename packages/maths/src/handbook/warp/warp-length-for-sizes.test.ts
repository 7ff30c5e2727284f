import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { brooks1892, commonPractice, starweaving2012, weaveAway, wheeler1908 } from "#ci/sources.js";
import type { Unit } from "../../engine/quantity/index.js";
import { inches, percentLost, yards } from "../../units/index.js";
import type { WarpLengthForSizesInput } from "./warp-length-for-sizes.js";
import { warpLengthForSizes } from "./warp-length-for-sizes.js";

const uncounted = (source: Citation["source"], at: string, exact: string): Citation => ({
  ...published(source, at, "", exact),
  status: source === commonPractice ? "common practice, no source" : "read",
});

describe("a warp shared out", () => {
  const nothingLost = {
    sample: inches(0),
    loomToFinished: percentLost(0),
    takeUp: percentLost(0),
    loomWaste: inches(0),
  };
  cited(
    "four rugs of six feet with five inches of fringe at each end",
    published(wheeler1908, "p. 34", "5 in first, 10 in between two rugs", "328"),
    warpLengthForSizes,
    [
      {
        ...nothingLost,
        pieces: [4],
        finishedLength: [inches(72)],
        hemEachEnd: [inches(0)],
        fringeEachEnd: [inches(5)],
      },
    ],
    inches,
  );
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
      published(starweaving2012, "steps 1-2", "65", "65"),
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
  it("is refused where the lists do not go together", () => {
    const input = { ...nothing, pieces: [1, 2], finishedLength: [inches(20)], hemEachEnd: none, fringeEachEnd: none };
    expect(() => warpLengthForSizes(input)).toThrow(/a list of 2/u);
    expect(() => warpLengthForSizes({ ...input, pieces: [] })).toThrow("pieces");
  });
});
