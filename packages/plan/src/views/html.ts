import type { PlanData } from "../data/plan-data.js";
import { planFrom } from "../data/plan-from.js";
import type { Block, Section } from "./block.js";
import { blanksMarkup, hatchPatterns, said, tableMarkup } from "./html-parts.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { pictureMarkup } from "./picture.js";
import { sectionsOf } from "./section.js";
import type { PrintOptions } from "./section.js";
import type { Signs } from "./signs.js";
import { STYLE } from "./style.js";
import { tapeMarkup } from "./tape.js";

function blockMarkup(block: Block, signs: Signs): Markup {
  switch (block.is) {
    case "says":
      return said(block, signs);
    case "heading":
      return html`<h3>${block.heading}</h3>`;
    case "table":
      return tableMarkup(block, signs);
    case "blanks":
      return blanksMarkup(block.what);
    case "picture":
      return pictureMarkup(block, signs);
    case "tape":
      return tapeMarkup(block);
    case "lines":
      return html`<h3>${block.heading}</h3>
        <pre>${block.lines.map((one) => html`<span class="line">${one}</span>`)}</pre>`;
  }
}

export function sectionMarkup({ name, heading, blocks }: Section, signs: Signs): Markup {
  return html`<section class="sheet" id="${name}" aria-labelledby="${name}-heading">
    <h2 id="${name}-heading">${heading}</h2>
    ${blocks.map((block) => blockMarkup(block, signs))}
  </section>`;
}

const POLICY = "default-src 'none'; style-src 'unsafe-inline'";

/** A whole page: its style within it, and nothing from outside. */
export function wholePage(title: string, content: readonly Markup[]): string {
  const style = { markup: STYLE };
  const { markup } = html`<!doctype html>
    <html lang="en-GB">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content="${POLICY}" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title}</title>
        <style>
          ${style}
        </style>
      </head>
      <body>
        <main>
          ${hatchPatterns}
          <h1>${title}</h1>
          ${content}
        </main>
      </body>
    </html>`;
  return markup;
}

/**
 * A plan as one page of HTML that needs nothing else: for A4 or Letter, and for a telephone on the bench.
 *
 * @param plan what `planWarp` gives, or a copy of it
 * @param options `without: "workings"` leaves out the sums at the back
 */
export function planHtml(plan: PlanData, options: PrintOptions = {}): string {
  const { title, sections, signs } = sectionsOf(planFrom(plan), options);
  return wholePage(
    title,
    sections.map((one) => sectionMarkup(one, signs)),
  );
}
