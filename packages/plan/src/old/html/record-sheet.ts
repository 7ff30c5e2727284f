import { COST_HEADS, costRows, costSentence, FIBRE_HEADS, fibreRows, fibreSentence } from "../text/after-lines.js";
import { recordSentence, toRecord } from "../text/cloth-lines.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { columns, sheet } from "./sheet.js";

/** What a piece costs, what its label needs, and what is kept for the next run. */
export function recordSheet(plan: WarpPlan): readonly Markup[] {
  const { costs, fibres } = plan;
  const room = html`<span class="line"></span>`;
  const body = html`<h3>Cost and least price</h3>
    ${costs === null ? [] : columns("Costs", COST_HEADS, costRows(costs))}
    <p>${costSentence(plan)}</p>
    <h3>Fibres for the label</h3>
    ${fibres === null ? [] : columns("Shares by mass", FIBRE_HEADS, fibreRows(fibres))}
    <p>${fibreSentence(plan)}</p>
    <h3>Keep for the next run</h3>
    <p>${recordSentence(plan)}</p>
    ${columns(
      "To fill in",
      ["what", "found"],
      toRecord(plan).map((what) => [what, room]),
    )}`;
  return [sheet(plan, { name: "record", kind: "plain", heading: "Cost, label and record", body })];
}
