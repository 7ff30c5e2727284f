import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { wolfensberger1921 } from "#ci/sources.js";
import {
  dramSilk,
  grams,
  inches,
  metres,
  percentAdded,
  picksPerCentimetre,
  picksPerInch,
  pounds,
  tex,
  yards,
} from "../../units/index.js";
import { weftMassDirect } from "./weft-mass-direct.js";

const at = (page: number, disposition: number): string => `p. ${String(page)}, disposition ${String(disposition)}`;

describe("mass of silk weft, drams to 1000 yards, 8 % of waste", () => {
  type Row = readonly [string, Citation, yards: number, picks: number, width: string, dram: string];
  const rows: readonly Row[] = [
    [
      "taffeta, 102 picks of two threads",
      published(
        wolfensberger1921,
        at(77, 1),
        "2.73",
        "863379/320000",
        "misprint: the fraction as displayed comes to 2.698; no one figure changed gives 2.73",
      ),
      ...([100, 204, "19", "1.65"] as const),
    ],
    ["satin duchesse", published(wolfensberger1921, at(85, 3), "21.414", "34263/1600"), 300, 80, "47", "4.5"],
    [
      "armure, 104 picks of two threads",
      published(wolfensberger1921, at(89, 4), "3.03", "2422953/800000"),
      60,
      208,
      "19.5",
      "2.95",
    ],
    ["pekin stripe", published(wolfensberger1921, at(99, 6), "3.57", "35721/10000"), 100, 144, "21", "2.8"],
  ];
  for (const [title, citation, length, picks, width, dram] of rows) {
    const cloth = { wovenLength: yards(length), picks: picksPerInch(picks), widthInReed: inches(width) };
    cited(title, citation, weftMassDirect, [{ ...cloth, count: dramSilk(dram), allowance: percentAdded(8) }], pounds);
  }
});

describe("the limits of weft mass direct", () => {
  limits(
    weftMassDirect,
    [
      "of a metre square at one pick a centimetre is 100 m",
      {
        wovenLength: metres(1),
        picks: picksPerCentimetre(1),
        widthInReed: metres(1),
        count: tex(10),
        allowance: percentAdded(0),
      },
      1,
      grams,
    ],
    {
      wovenLength: metres(0),
      picks: picksPerCentimetre(0),
      widthInReed: metres(0),
      count: tex(0),
      allowance: percentAdded(-1),
    },
  );
});
