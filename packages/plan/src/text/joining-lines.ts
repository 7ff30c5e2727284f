import type { JoiningRow } from "../plan/joining.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { plainText } from "./clean.js";
import { table, wrapped } from "./layout.js";

/** How the chains lie before the weaver, and what is done with them before the first knot. */
export function layingLines({ laid, endOneAt, position }: WarpPlan): readonly string[] {
  const rows = laid.map(({ place, number, firstEnd, lastEnd }) => {
    const [from, to] = endOneAt === "left" ? [firstEnd, lastEnd] : [lastEnd, firstEnd];
    return [place, number, `${String(from)} to ${String(to)}`];
  });
  return [
    `End 1 is at your ${endOneAt} as you sit.`,
    ...table(["from your left", "chain", "ends"], rows),
    ...wrapped(position.beforeTying),
  ];
}

function joiningRow(one: JoiningRow): readonly (string | number)[] {
  const { stripe, colour, ends, firstEnd, lastEnd, dent, placeInRepeat, shaft } = one;
  const cuts = [one.splitsDent ? "dent" : "", one.splitsRepeat ? "repeat" : ""].filter((cut) => cut !== "");
  return [stripe, plainText(colour), ends, firstEnd, lastEnd, dent, placeInRepeat, shaft, cuts.join(", ")];
}

/** Where the last end of each stripe must stand on the old warp. */
export function joiningLines({ joining, endOneAt, shedProof }: WarpPlan): readonly string[] {
  const heads = ["stripe", "colour", "ends", "first", "last", "dent", "place", "shaft", "edge cuts"];
  const carried = shedProof.map(({ shaft, ends }) => `shaft ${String(shaft)}: ${String(ends)}`).join(", ");
  return [
    ...wrapped(
      `Begin at end 1, at your ${endOneAt}, and count dents from the one that holds it. At the last knot of each stripe the old end must stand in this dent, at this place of the threading repeat and on this shaft. If it does not, the miscount lies in this stripe: find it before you tie on.`,
    ),
    ...table(heads, joining.map(joiningRow)),
    ...wrapped(`Ends on each shaft: ${carried}.`),
  ];
}
