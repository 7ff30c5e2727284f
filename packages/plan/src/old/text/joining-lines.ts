import type { WarpPlan } from "../plan/warp-plan.js";
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
