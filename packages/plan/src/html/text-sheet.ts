import type { WarpPlan } from "../plan/warp-plan.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { sheet } from "./sheet.js";

/** A part of the printed text under its own heading. */
export type TextPart = readonly [heading: string, lines: readonly string[]];

function lineOf(line: string): Markup {
  return html`<span class="line">${line}</span>`;
}

function part([heading, lines]: TextPart): Markup {
  return html`<h3>${heading}</h3>
    <pre>${lines.map(lineOf)}</pre>`;
}

/** A page of what the terminal prints, line for line. */
export function textSheet(plan: WarpPlan, name: string, heading: string, parts: readonly TextPart[]): Markup {
  return sheet(plan, { name, kind: "plain", heading, body: parts.map(part) });
}
