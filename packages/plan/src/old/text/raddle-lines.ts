import { raddleRows } from "../plan/raddle.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { measuredText } from "./amounts.js";
import { table, wrapped } from "./layout.js";

/** How a warp that is beamed before it is tied is spread. */
export function raddleLines(plan: WarpPlan): readonly string[] {
  const { ends, sett, widthInReed, endOneAt } = plan;
  const rows = raddleRows(plan).map(([to, last], at, all) => [to, last - (all[at - 1]?.[1] ?? 0), last]);
  return [
    ...wrapped(
      `Spread the ${String(ends)} ends over ${measuredText(widthInReed, "nearest")}, ${String(sett)}, the middle of the warp at the middle of the raddle. End 1 lies at your ${endOneAt} as you sit to tie.`,
    ),
    ...table(["up to", "ends", "so far"], rows),
  ];
}
