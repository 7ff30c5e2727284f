import type { WarpPlan } from "../plan/warp-plan.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";

/** What the page for one place of work is made of. */
export interface Sheet {
  /** Unique in the document: letters, figures and hyphens. */
  readonly name: string;
  /** What the stylesheet knows it by. */
  readonly kind: "plain" | "knots" | "tape";
  readonly heading: string;
  readonly body: Markup | readonly Markup[];
}

/** A page for one place of work, the name of the job at its head. */
export function sheet({ title }: WarpPlan, { name, kind, heading, body }: Sheet): Markup {
  return html`<section class="sheet ${kind}" aria-labelledby="${name}">
    <header>
      <h2 id="${name}">${heading}</h2>
      <p class="job">${title}</p>
    </header>
    ${body}
  </section>`;
}

type Cell = string | number | Markup;

/** Columns with a caption that is read aloud. */
export function columns(caption: string, heads: readonly string[], rows: readonly (readonly Cell[])[]): Markup {
  const cell = (one: Cell): Markup =>
    typeof one === "number" ? html`<td class="number">${one}</td>` : html`<td>${one}</td>`;
  const isNumber = heads.map((_, at) => rows.every((row) => typeof row[at] === "number"));
  return html`<table>
    <caption>
      ${caption}
    </caption>
    <thead>
      <tr>
        ${heads.map((head, at) => html`<th scope="col" class="${isNumber[at] === true ? "number" : "words"}">${head}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (row) =>
          html`<tr>
            ${row.map(cell)}
          </tr>`,
      )}
    </tbody>
  </table>`;
}

/** Sentences under each other, a rule below each. */
export function ruled(sentences: readonly string[]): readonly Markup[] {
  return sentences.map((sentence) => html`<p class="ruled">${sentence}</p>`);
}

/** A place to write in. */
export const blank: Markup = html`<span class="blank"><span class="unseen">to fill in</span></span>`;

/** A box to tick with a pencil. */
export const tickBox: Markup = html`<span class="box" aria-hidden="true"></span>`;
