import type { WarpPlan } from "../plan/warp-plan.js";
import { raddleRows } from "../plan/raddle.js";
import { measuredText } from "../text/amounts.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { columns, sheet, tickBox } from "./sheet.js";

/** Only a warp beamed before it is tied needs a raddle: otherwise the old reed spreads it. */
export function raddleSheet(plan: WarpPlan): readonly Markup[] {
  if (plan.position.beamed !== "before tying") return [];
  const { ends, sett, widthInReed, endOneAt } = plan;
  const rows = raddleRows(plan).map(([to, last], at, all) => [tickBox, to, last - (all[at - 1]?.[1] ?? 0), last]);
  const body = html`<p>
      Spread the ${ends} ends over ${measuredText(widthInReed, "nearest")}, ${String(sett)}, the middle of the warp at
      the middle of the raddle. End 1 lies at your <b>${endOneAt.toUpperCase()}</b> as you sit to tie.
    </p>
    ${columns("Ends in the raddle, counted from end 1", ["laid", "up to", "ends", "so far"], rows)}`;
  return [sheet(plan, { name: "raddle", kind: "plain", heading: "Raddle", body })];
}
