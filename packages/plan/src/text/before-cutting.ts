import type { WarpPlan } from "../plan/warp-plan.js";
import { measuredText, yarnText } from "./amounts.js";
import { plainText } from "./clean.js";
import { wrapped } from "./layout.js";

const CAUTIONS = [
  "Ease the tension a tooth at a time, hands and hair clear of the crank: a warp let go under tension takes its beam, and fingers, with it. Then lock or tie the cloth beam and the warp beam, so that neither can roll back when the warp is cut.",
  "Cut away from yourself, group by group, and tie each group before the next is cut. Where a school or workshop has rules for looms and blades, they come first.",
];

/** What comes before the scissors, the cautions first: there is no way back from the cut. */
export function beforeCutting({ position, weaverFaces }: WarpPlan): readonly string[] {
  const { knotsTied, lease, cut, cutSource, spared, sparedAt, sparedYarn, waste, steps } = position;
  const saved =
    steps.length === 0
      ? `No waste is planned at the ${sparedAt}, where the old warp would stand in for it.`
      : `The old warp stands in for ${measuredText(spared, "nearest")} of waste at the ${sparedAt}: ${yarnText(sparedYarn, "roundUp")} of yarn need not be wound.`;
  const source =
    typeof cutSource === "string"
      ? cutSource
      : `${cutSource.author}, ${cutSource.title}, ${cutSource.year}, ${cutSource.place}`;
  const lines = [
    `The knots are tied ${knotsTied}; you sit facing the ${weaverFaces}.`,
    ...(lease === null ? [] : [lease]),
    ...CAUTIONS,
    `${cut} (Source: ${source}.)`,
    `${saved} The new warp still brings ${measuredText(waste, "nearest")}.`,
  ];
  return lines.flatMap((line) => wrapped(line));
}

const VERDICTS = {
  fits: "The new warp fits the old threading.",
  check: "The new warp can be tied on; look at what is marked CHECK first.",
  "does not fit": "THE NEW WARP DOES NOT FIT THE OLD ONE as it is planned. Mend what is marked MUST.",
};
const MARKS = { must: "MUST", check: "CHECK", free: "note" };

/** Whether the new warp fits, and everything compared. */
export function fitLines({ fit, joinable }: WarpPlan): readonly string[] {
  const { lease, sides, knots, gapMeasured } = joinable;
  const gap = gapMeasured
    ? ""
    : "The gap in a dent was not measured: 60 % of its pitch is taken, as for power-loom reeds. ";
  return [
    ...wrapped(VERDICTS[fit.verdict]),
    ...fit.findings.flatMap(({ standing, agrees, says, yarns }) => {
      const whose = yarns.length === 0 ? "" : `, ${yarns.map(plainText).join(" and ")}`;
      return wrapped(`${agrees ? "agrees" : MARKS[standing]}${whose}: ${says}`, "  ", "    ");
    }),
    ...wrapped(`Lease: ${lease.says}`, "  ", "    "),
    ...(sides.difference === 0 ? [] : wrapped(`At the sides: ${sides.says}`, "  ", "    ")),
    ...knots.flatMap(({ yarn, says }) => wrapped(`Knots in ${plainText(yarn)}: ${gap}${says}`, "  ", "    ")),
    ...wrapped("The heddle eyes are not judged: draw one knot through an eye before you tie the rest.", "  ", "    "),
  ];
}
