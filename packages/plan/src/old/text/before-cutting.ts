import type { KnotPosition } from "../plan/position.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { measuredText, yarnText } from "./amounts.js";
import { plainText } from "./clean.js";
import { wrapped } from "./layout.js";

/** One thing to know or to do before the scissors; a caution stands where its danger is. */
export interface CuttingStep {
  readonly kind: "fact" | "step" | "caution";
  readonly says: string;
}

const CAUTIONS: readonly CuttingStep[] = [
  "Ease the tension a tooth at a time, hands and hair clear of the crank: a warp let go under tension takes its beam, and fingers, with it. Then lock or tie the cloth beam and the warp beam, so that neither can roll back when the warp is cut.",
  "Cut away from yourself, group by group, and tie each group before the next is cut. Where a school or workshop has rules for looms and blades, they come first.",
].map((says) => ({ kind: "caution", says }));

function savedBy({ spared, sparedAt, sparedYarn, waste, steps }: KnotPosition): string {
  const saved =
    steps.length === 0
      ? `No waste is planned at the ${sparedAt}, where the old warp would stand in for it.`
      : `The old warp stands in for ${measuredText(spared, "nearest")} of waste at the ${sparedAt}: ${yarnText(sparedYarn, "roundUp")} of yarn need not be wound.`;
  return `${saved} The new warp still brings ${measuredText(waste, "nearest")}.`;
}

/** What comes before the scissors, in order: there is no way back from the cut. */
export function cuttingSteps({ position, weaverFaces }: WarpPlan): readonly CuttingStep[] {
  const { knotsTied, lease, cut, cutSource, held } = position;
  const source =
    typeof cutSource === "string"
      ? cutSource
      : `${cutSource.author}, ${cutSource.title}, ${cutSource.year}, ${cutSource.place}`;
  return [
    { kind: "fact", says: `The knots are tied ${knotsTied}; you sit facing the ${weaverFaces}.` },
    ...(lease === null ? [] : [{ kind: "step", says: lease } as const]),
    ...CAUTIONS,
    { kind: "step", says: `${cut} (Source: ${source}.)` },
    ...(held === null ? [] : [{ kind: "step", says: held } as const]),
    { kind: "fact", says: savedBy(position) },
  ];
}

/** The same in lines. */
export function beforeCutting(plan: WarpPlan): readonly string[] {
  return cuttingSteps(plan).flatMap(({ says }) => wrapped(says));
}

const VERDICTS = {
  fits: "The new warp fits the old threading.",
  check: "The new warp can be tied on; look at what is marked CHECK first.",
  "does not fit": "THE NEW WARP DOES NOT FIT THE OLD ONE as it is planned. Mend what is marked MUST.",
};
const MARKS = { must: "MUST", check: "CHECK", free: "note" };

/** Whether the new warp fits, in a sentence. */
export function fitVerdict({ fit }: WarpPlan): string {
  return VERDICTS[fit.verdict];
}

function listed(names: readonly string[]): string {
  return names.map(plainText).join(" and ");
}

/** Yarns of which the same is true, told together. */
function yarnsBySentence(knots: WarpPlan["joinable"]["knots"]): ReadonlyMap<string, readonly string[]> {
  const yarns = new Map<string, readonly string[]>();
  for (const { yarn, says } of knots) yarns.set(says, [...(yarns.get(says) ?? []), yarn]);
  return yarns;
}

/** Everything compared: how much it matters or what it is about, and what was found. */
export function fitRemarks({ fit, joinable }: WarpPlan): readonly (readonly [mark: string, says: string])[] {
  const { lease, knots, openTaken } = joinable;
  const gap =
    openTaken === null
      ? ""
      : `The gap in a dent was not measured: ${String(openTaken)} of its pitch is taken, as for power-loom reeds. `;
  return [
    ...fit.findings.map(({ standing, agrees, says, yarns }) => {
      const whose = yarns.length === 0 ? "" : `, ${listed(yarns)}`;
      return [`${agrees ? "agrees" : MARKS[standing]}${whose}`, says] as const;
    }),
    ...fit.neighbours.map(({ difference, agrees, says }) => {
      const mark = difference === null ? MARKS.free : agrees ? "agrees" : MARKS.check;
      return [`${mark}, colours`, plainText(says)] as const;
    }),
    ["Lease", lease.says],
    ...[...yarnsBySentence(knots)].map(([says, yarns]) => [`Knots in ${listed(yarns)}`, `${gap}${says}`] as const),
    ["Heddle eyes", "They are not judged: draw one knot through an eye before you tie the rest."],
  ];
}

/** The same in lines. */
export function fitLines(plan: WarpPlan): readonly string[] {
  const remarks = fitRemarks(plan).flatMap(([mark, says]) => wrapped(`${mark}: ${says}`, "  ", "    "));
  return [...wrapped(fitVerdict(plan)), ...remarks];
}
