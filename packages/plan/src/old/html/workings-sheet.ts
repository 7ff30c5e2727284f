import { workingParts } from "../text/working-parts.js";
import type { WorkingPart } from "../text/working-parts.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { sheet } from "./sheet.js";

function line(text: string): Markup {
  return html`<span class="line">${text}</span>`;
}

function part([heading, lines]: WorkingPart): Markup {
  return html`<h3>${heading}</h3>
    <pre>${lines.map(line)}</pre>`;
}

/** Every sum of the plan, its lines set under each other as on the terminal. */
export function workingsSheet(plan: WarpPlan): readonly Markup[] {
  const body = workingParts(plan).map(part);
  return [sheet(plan, { name: "workings", kind: "plain", heading: "Workings", body })];
}
