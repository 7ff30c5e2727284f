import type { TyingGroup } from "../plan/groups.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { plainText } from "./clean.js";
import { table, wrapped } from "./layout.js";

const BLANK = "____";

/** Why it is counted, and what a number that differs means. */
export const COUNTED =
  "Broken ends, doubled ends and empty heddles are found now or not at all. Where a number is another than here, the loom is right: write what was found into the job and plan again.";

/** The old warp counted as it stands, before anything is cut. */
export function countLines({ oldGroups, endOneAt }: WarpPlan): readonly string[] {
  const rows = oldGroups.map(({ group, firstEnd, lastEnd, ends, firstShaft, lastShaft }) => [
    group,
    `${String(firstEnd)} to ${String(lastEnd)}`,
    ends,
    `${String(firstShaft)} to ${String(lastShaft)}`,
    BLANK,
  ]);
  return [
    ...wrapped(
      `Count the old warp as it stands, group by group, from end 1, at your ${endOneAt} as you will sit to tie. ${COUNTED}`,
    ),
    ...table(["group", "ends", "how many", "shafts", "counted"], rows),
  ];
}

function knotRow({ group, colour, ends, firstEnd, lastEnd, lastShaft, lastDent, endsStripe }: TyingGroup): string[] {
  const place = `${String(firstEnd)} to ${String(lastEnd)}`;
  const left = endsStripe ? `STRIPE ENDS  old ${BLANK} new ${BLANK}` : `old ${BLANK} new ${BLANK}`;
  return [`[ ] ${String(group)}`, place, plainText(colour), String(ends), String(lastShaft), String(lastDent), left];
}

/** What must agree at the last knot of a group, where the weaver can see it from her seat. */
const AGREES: Readonly<Record<WarpPlan["position"]["knotsTied"], string>> = {
  "in front of the reed":
    "Its last old end must be on the shaft named here and stand in this dent, counted from the one that holds end 1.",
  "behind the reed":
    "Its last old end must be on the shaft named here, and its last new end stand in this dent, counted from the one that holds end 1.",
  "behind the heddles":
    "Its last old end must be on the shaft named here; the dent, counted from the one that holds end 1, is seen from the front only.",
};

/** How the knots are tied, and what tells where a miscount lies. */
export function tyingSentence({ endOneAt, position, knot }: WarpPlan): string {
  return `Begin at end 1, at your ${endOneAt}, and tie each new end to the next old one (knot: ${knot}). Count each group off on both warps, tie it, tick it, then write down what is left over of it. ${AGREES[position.knotsTied]} Where a stripe ends nothing may be left over: if something is, or the shaft does not agree, the miscount lies between this line and the last stripe end that agreed.`;
}

/** The knots in groups; what is left over after each tells where a miscount lies. */
export function groupLines(plan: WarpPlan): readonly string[] {
  const { groups } = plan;
  return [
    ...wrapped(tyingSentence(plan)),
    ...table(["group", "ends", "colour", "knots", "shaft", "dent", "left over"], groups.map(knotRow)),
    ...wrapped(`Stopped at end ${BLANK}, on the ${BLANK} of ${BLANK}.`),
  ];
}
