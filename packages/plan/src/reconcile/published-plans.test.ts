import { centimetres, currency, endsPerCentimetre, endsPerInch, grams, inches, metres } from "@thrum/maths";
import { metresPerKilogram, picksPerInch, pounds, yards, yardsPerPound } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { CitedSource } from "#ci/cited.js";
import {
  allFiberArts,
  allFiberArtsPricing,
  creativeThreads,
  durhamWeaver,
  dustBunniesStars2013,
  fiberGeekery2011,
  franz2021,
  handwovenWarpLength,
  hortonPlacemats,
  jeanWeaves2014,
  kilgus2025,
  mallikerta,
  measuredThreads,
  patrickFriendship,
  pegotty2009,
  sammonsGather,
  schacht2019,
  spaceSavingMats,
  sparksearcherBalanced,
  stripedFloorCovering,
  trapunto2012,
  vogl2001,
  weaveAway,
  weavingFromParadise2019,
  weftHanded2010,
  zaldograce2019,
} from "#ci/sources.js";
import { figureKinds } from "./figures.js";
import type { FigureName } from "./figures.js";
import { reconcile } from "./reconcile.js";
import type { Reconciliation } from "./reconcile.js";
import type { PrintedFigure } from "./stated-figure.js";

/** What is printed; where the page can be checked on it, what its other figures give, by hand, and why it prints another. */
type Line = readonly [
  figure: FigureName,
  printed: string,
  unit: PrintedFigure["unit"],
  exact?: string,
  differs?: string,
];

/** The figures of a published project as its page prints them, and what reading it by hand found. */
interface PublishedPlan {
  readonly source: CitedSource;
  readonly at: string;
  readonly figures: readonly Line[];
  readonly verdict: Reconciliation["verdict"];
  /** The convention or figure by which the page is explained. */
  readonly by: string;
}

function plan(
  source: CitedSource,
  figures: readonly Line[],
  verdict: Reconciliation["verdict"],
  by = "",
  at = "figures of the project",
): PublishedPlan {
  return { source, at, figures, verdict, by };
}

const usDollars = currency("USD");

/**
 * In the order in which they were read, with the figures a sum here can use. Some are our framing of the page: one piece
 * where it states a single length, one metre of warp where it states grams to the metre, the ends of a repeat counted
 * from its threading, the edge ends added to its total, "almost" and "just under" left off.
 */
const publishedPlans: readonly PublishedPlan[] = [
  plan(
    patrickFriendship,
    [
      ["ends", "414", "count"],
      ["sett", "20", endsPerInch],
      ["widthInReed", "20 5/8", inches],
      [
        "warpLength",
        "5 2/3",
        yards,
        "208/36",
        "four pieces and the waste come to 208 in at least, the page gives it in thirds of a yard",
      ],
      ["pieces", "4", "count"],
      ["wovenLength", "43", inches],
      ["loomWaste", "36", inches],
      ["picksPerLength", "24", picksPerInch],
      ["warpYarn", "2320", yards, "2346", "misprint: 414 ends of 5 2/3 yd are 26 yd more"],
    ],
    "one change",
    "warpYarn",
  ),
  plan(
    measuredThreads,
    [
      ["widthInReed", "22", inches],
      ["sett", "24", endsPerInch],
      ["ends", "528", "count", "528"],
      ["warpLength", "4", yards],
      ["warpYarn", "2112", yards, "2112"],
      ["lengthPerMass", "3360", yardsPerPound],
      ["warpMass", "2/3", pounds, "22/35", "the page says almost 2/3: 2112 ÷ 3360"],
    ],
    "agrees",
  ),
  plan(
    allFiberArts,
    [
      ["finishedWidth", "17", inches],
      ["widthLoss", "15", "percent"],
      ["widthInReed", "19.5", inches, "20", "the page adds 15 % of the finished width, 19.55, and rounds it down"],
      ["sett", "20", endsPerInch],
      ["ends", "390", "count", "390"],
      ["finishedLength", "36", inches],
      ["hemEachEnd", "2", inches],
      ["lengthLoss", "15", "percent"],
      ["loomWaste", "36", inches],
      ["pieces", "2", "count"],
      ["warpLength", "3.5", yards, "553/153", "the page adds 15 % of the cut length, 128 in, and rounds it down"],
      ["warpYarn", "1365", yards, "1365"],
    ],
    "one convention",
    "adding rule",
  ),
  plan(
    allFiberArtsPricing,
    [
      ["widthInReed", "45", inches],
      ["sett", "6", endsPerInch],
      ["ends", "270", "count", "270"],
      ["warpLength", "12", yards],
      ["lengthPerMass", "2240", yardsPerPound],
      ["warpMass", "1.45", pounds, "81/56"],
      ["costPerPound", "40", usDollars],
      ["warpCost", "58.00", usDollars, "58"],
    ],
    "agrees",
  ),
  plan(
    creativeThreads,
    [
      ["finishedWidth", "50", centimetres],
      ["widthLoss", "10", "percent"],
      ["sett", "8", endsPerCentimetre],
      ["ends", "440", "count", "444", "the page adds 10 % of the finished width: 8 × 50 ÷ 0.9 is 444.4"],
    ],
    "one convention",
    "adding rule",
  ),
  plan(
    sparksearcherBalanced,
    [
      ["sett", "8", endsPerInch],
      ["widthInReed", "7", inches],
      ["ends", "56", "count", "56"],
      ["pieces", "1", "count"],
      ["wovenLength", "70", inches],
      ["loomWaste", "20", inches],
      ["warpYarn", "140", yards, "140"],
    ],
    "agrees",
  ),
  plan(
    jeanWeaves2014,
    [
      ["widthInReed", "48", inches],
      ["sett", "48", endsPerInch],
      ["ends", "2304", "count", "2304"],
      ["warpLength", "7.5", yards],
      ["warpYarn", "17280", yards, "17280"],
      ["lengthPerMass", "8400", yardsPerPound],
      ["warpMass", "2.057", pounds, "72/35"],
    ],
    "agrees",
  ),
  plan(
    weftHanded2010,
    [
      ["widthInReed", "45", inches],
      ["sett", "10", endsPerInch],
      ["ends", "450", "count", "450"],
      ["warpLength", "10", yards],
      ["warpYarn", "4500", yards, "4500"],
      ["picksPerLength", "10", picksPerInch],
      ["wovenInAll", "10", yards],
      ["weftYarn", "4500", yards, "4500"],
    ],
    "agrees",
  ),
  plan(
    hortonPlacemats,
    [
      ["ends", "99", "count"],
      ["pieces", "1", "count"],
      ["wovenLength", "34", inches],
      ["takeUpLength", "3", inches],
      ["loomWaste", "26", inches],
      ["warpLength", "60", inches, "63", "the fringe stands both in the woven length and in the waste"],
      ["warpYarn", "165", yards],
    ],
    "one change",
    "loomWaste",
  ),
  plan(
    sammonsGather,
    [
      ["ends", "110", "count"],
      ["warpLength", "110", inches],
      ["warpYarn", "340", yards],
    ],
    "one way of rounding",
    "in round numbers",
  ),
  plan(
    spaceSavingMats,
    [
      ["repeats", "3", "count"],
      ["endsPerRepeat", "24", "count"],
      ["balancingEnds", "12", "count"],
      ["ends", "84", "count", "84"],
      ["warpLength", "122", inches],
      ["warpYarn", "285", yards, "854/3"],
      ["warpYarnAgain", "260.5", metres, "260.604", "285 × 0.9144 is 260.6"],
    ],
    "one change",
    "warpYarnAgain",
  ),
  plan(
    stripedFloorCovering,
    [
      ["ends", "84", "count", "84"],
      ["sett", "4", endsPerInch],
      ["widthInReed", "21", inches],
      ["warpYarn", "160", yards, "476/3", "84 ends of 68 in, rounded to tens"],
      ["warpYarnAgain", "181", metres, "146.304", "misprint: 160 yd are 146.3 m, 181 m would be 198 yd"],
      ["warpLength", "68", inches],
    ],
    "one change",
    "warpYarnAgain",
  ),
  plan(
    zaldograce2019,
    [
      ["widthInReed", "24", inches],
      ["sett", "20", endsPerInch],
      ["warpLength", "104", inches],
      ["picksPerLength", "14", picksPerInch],
      ["wovenInAll", "79.5", inches],
      [
        "yarnInAll",
        "2146",
        yards,
        "6386/3",
        "the yarn was weighed: 480 ends of 104 in and a weft laid straight are 17 yd less",
      ],
    ],
    "too little stated",
  ),
  plan(
    mallikerta,
    [
      ["widthInReed", "106", centimetres],
      ["sett", "2.5", endsPerCentimetre],
      ["ends", "265", "count", "269", "the four edge ends are left out of the total"],
      ["edgeEnds", "4", "count"],
      ["warpLength", "5.8", metres],
      ["lengthPerMass", "2560", metresPerKilogram],
      ["warpMass", "600", grams, "600.390625"],
    ],
    "one convention",
    "edge ends left out",
    "Pohja-en-4",
  ),
  plan(
    mallikerta,
    [
      ["widthInReed", "84.8", centimetres],
      ["sett", "2.5", endsPerCentimetre],
      ["ends", "215", "count"],
      ["edgeEnds", "4", "count"],
      ["warpLength", "1", metres],
      ["lengthPerMass", "2560", metresPerKilogram],
      ["warpMass", "85", grams, "83.984375", "printed one gram more, perhaps with the edge ends twice"],
    ],
    "not explained",
    "",
    "Colourful checks",
  ),
  plan(
    handwovenWarpLength,
    [
      ["pieces", "8", "count"],
      ["wovenLength", "34", inches],
      ["takeUpLength", "26", inches],
      ["loomWaste", "31", inches],
    ],
    "too little stated",
  ),
  plan(
    vogl2001,
    [
      ["widthInReed", "1", inches],
      ["sett", "30", endsPerInch],
      ["ends", "30", "count", "30"],
    ],
    "agrees",
  ),
  plan(
    kilgus2025,
    [
      ["ends", "248", "count"],
      ["loomWaste", "28", inches],
    ],
    "too little stated",
  ),
  plan(
    durhamWeaver,
    [
      ["repeats", "12", "count"],
      ["endsPerRepeat", "40", "count"],
      ["balancingEnds", "14", "count"],
      ["edgeEnds", "4", "count"],
      ["ends", "494", "count", "498", "misprint: the four edge ends at the far side are left out"],
    ],
    "one convention",
    "edge ends left out",
    "A Pattern for Tea Towels, 11 June 2014",
  ),
  plan(
    franz2021,
    [
      ["ends", "562", "count", "560", "28 × 20; with two floating selvedges the width is 20.07 in"],
      ["sett", "28", endsPerInch],
      ["widthInReed", "20", inches],
    ],
    "agrees",
  ),
  plan(
    trapunto2012,
    [
      ["repeats", "7", "count"],
      ["endsPerRepeat", "37", "count"],
      ["balancingEnds", "41", "count"],
      ["ends", "300", "count", "300"],
      ["sett", "17.5", endsPerInch],
      ["widthInReed", "17 1/8", inches],
    ],
    "agrees",
  ),
  plan(
    weavingFromParadise2019,
    [
      ["repeats", "4", "count"],
      ["endsPerRepeat", "48", "count"],
      ["sett", "16", endsPerInch],
      ["warpLength", "250", centimetres],
    ],
    "too little stated",
  ),
  plan(
    schacht2019,
    [
      ["ends", "295", "count", "295"],
      ["sett", "20", endsPerInch],
      ["widthInReed", "14 3/4", inches],
    ],
    "agrees",
  ),
  plan(
    dustBunniesStars2013,
    [
      ["ends", "868", "count"],
      ["sett", "36", endsPerInch],
      ["pieces", "6", "count"],
      ["wovenLength", "36", inches],
      ["warpLength", "242", inches],
    ],
    "too little stated",
  ),
  plan(
    fiberGeekery2011,
    [
      ["ends", "501", "count", "502", "24 × 20.9; the width is 20.875 in and printed rounded"],
      ["sett", "24", endsPerInch],
      ["widthInReed", "20.9", inches],
    ],
    "agrees",
  ),
  plan(
    pegotty2009,
    [
      ["sett", "24", endsPerInch],
      ["widthInReed", "22", inches],
      ["ends", "180", "count", "528", "misprint: 24 × 22; 180 ends would be 7 1/2 in wide"],
    ],
    "one change",
    "ends",
  ),
  plan(
    weaveAway,
    [
      ["widthInReed", "16", inches],
      ["sett", "20", endsPerInch],
      ["edgeEnds", "2", "count"],
      ["ends", "322", "count", "322"],
    ],
    "agrees",
  ),
];

function asPrinted(figures: readonly Line[]): readonly PrintedFigure[] {
  return figures.map(([figure, printed, unit]) => ({ figure, printed, unit }));
}

describe.each(publishedPlans)("$source.author, $source.title, $at", ({ source, at, figures, verdict, by }) => {
  const project = asPrinted(figures);
  const found = reconcile(project);

  it(`${verdict} ${by}`, () => {
    expect(found.verdict).toBe(verdict);
    const ways = found.ways.flatMap(({ convention, rounding }) => [convention, rounding]);
    if (by !== "") expect([...ways, ...found.changes.map(({ figure }) => figure)]).toContain(by);
  });

  for (const [figure, printed, unit, exact, differs] of figures) {
    if (exact === undefined) continue;
    const path = `sums.${String(found.sums.findIndex((sum) => sum.figure === figure))}.reckoned`;
    const title = `${figureKinds[figure].says.replace(", all of them", " in all")}, by what else is printed: ${source.title}`;
    const read = typeof unit === "string" ? path : ([path, unit] as const);
    cited(title, published(source, at, printed, exact, differs), reconcile, [project], read);
  }
});

describe("the published plans", () => {
  it("are told apart honestly", () => {
    const verdicts = publishedPlans.map(({ figures }) => reconcile(asPrinted(figures)).verdict);
    const count = (one: string): number => verdicts.filter((verdict) => verdict === one).length;
    const kinds = [
      "agrees",
      "one convention",
      "one way of rounding",
      "one change",
      "not explained",
      "too little stated",
    ];
    // Of the 22 with something to check 11 agree and 10 are explained; the checks have two misprints.
    expect(kinds.map(count)).toEqual([11, 4, 1, 5, 1, 5]);
  });
});
