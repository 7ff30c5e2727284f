import { cuttingSteps, fitRemarks, fitVerdict } from "../text/before-cutting.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { columns, sheet, tickBox } from "./sheet.js";

function fit(plan: WarpPlan): Markup {
  return html`<h3>Does the new warp fit?</h3>
    <p><b>${fitVerdict(plan)}</b></p>
    ${columns("Old warp and new compared", ["mark", "found"], fitRemarks(plan))}`;
}

function cut(plan: WarpPlan): Markup {
  const rows = cuttingSteps(plan).map(({ kind, says }) => [
    kind === "fact" ? "" : tickBox,
    kind === "caution" ? html`<b>Caution.</b> ${says}` : says,
  ]);
  return html`<h3>Before you cut</h3>
    ${columns("Step by step", ["done", "what to do"], rows)}`;
}

/** What is settled before there is no way back; what hinders the plan comes first. */
export function beforeCuttingSheet(plan: WarpPlan): readonly Markup[] {
  const parts = plan.fit.verdict === "does not fit" ? [fit(plan), cut(plan)] : [cut(plan), fit(plan)];
  return [sheet(plan, { name: "before-cutting", kind: "plain", heading: "Before cutting", body: parts })];
}
