import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { wolfensberger1921 } from "#ci/sources.js";
import { dramSilk, grams, metres, ounces, percentAdded, pounds, tex, yards } from "../../units/index.js";
import { warpMassDirect } from "./warp-mass-direct.js";

const at = (page: number, disposition: number): string => `p. ${String(page)}, disposition ${String(disposition)}`;

describe("mass of a warp of silk, drams to 1000 yards, 4 % of waste", () => {
  const rows: readonly (readonly [string, Citation, ends: number, length: number, dram: string])[] = [
    [
      "taffeta, 4032 ends of 110 yards",
      published(wolfensberger1921, at(76, 1), "2.65", "1324323/500000"),
      4032,
      110,
      "1.47",
    ],
    [
      "surah, 3864 ends of 54 yards",
      published(wolfensberger1921, at(80, 2), "1.10", "2203929/2000000"),
      3864,
      54,
      "1.3",
    ],
    [
      "armure, 4784 ends of 64 yards",
      published(wolfensberger1921, at(88, 4), "1.84", "143819/78125"),
      4784,
      64,
      "1.48",
    ],
    [
      "printed armure, 3984 ends of 54 yards",
      published(wolfensberger1921, at(92, 5), "1.31", "262197/200000"),
      3984,
      54,
      "1.5",
    ],
    [
      "black, 6132 ends of 106 yards",
      published(wolfensberger1921, at(98, 6), "3.56", "28518399/8000000"),
      6132,
      106,
      "1.35",
    ],
    [
      "sky, 1680 ends of 106 yards",
      published(wolfensberger1921, at(98, 6), "0.83", "332787/400000"),
      1680,
      106,
      "1.15",
    ],
  ];
  for (const [title, citation, ends, length, dram] of rows) {
    const input = { ends, warpLength: yards(length), count: dramSilk(dram), allowance: percentAdded(4) };
    cited(title, citation, warpMassDirect, [input], pounds);
  }
  cited(
    "the surah in ounces",
    published(wolfensberger1921, at(80, 2), "17.06", "2203929/125000", "misprint: 0.10 lb is 1.6 oz, printed 1.06"),
    warpMassDirect,
    [{ ends: 3864, warpLength: yards(54), count: dramSilk("1.3"), allowance: percentAdded(4) }],
    ounces,
  );
});

describe("the limits of warp mass direct", () => {
  limits(
    warpMassDirect,
    ["of no ends is nothing", { ends: 0, warpLength: metres(7), count: tex(30), allowance: percentAdded(0) }, 0, grams],
    { ends: -1, warpLength: metres(0), count: tex(0), allowance: percentAdded(-1) },
  );
});
