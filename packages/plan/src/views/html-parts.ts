import type { Inline, Line, Manner, Says, Table, TableRow } from "./block.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { HATCHES } from "./signs.js";
import type { Signs } from "./signs.js";

/** The hatches, to be put into a page once. */
export const hatchPatterns: Markup = html`<svg class="hatches" aria-hidden="true" focusable="false">
  <defs>
    ${HATCHES.map(
      ({ name, lines }) =>
        html`<pattern id="hatch-${name}" width="8" height="8" patternUnits="userSpaceOnUse">
          <rect width="8" height="8" fill="#fff" />
          <path d="${lines}" fill="${name === "black" ? "#000" : "none"}" stroke="#000" stroke-width="1.2" />
        </pattern>`,
    )}
  </defs>
</svg>`;

/** A name that may be broken within a word only where it is longer than a column. */
function broken(name: string): readonly Markup[] {
  const pieces = name.match(/\S{1,12}|\s+/gu) ?? [];
  return pieces.map((piece, at) => (at > 0 && /^\S/u.test(piece) ? html`<wbr />${piece}` : html`${piece}`));
}

/** A yarn by its letter, its hatch and its word. */
export function colourSign(name: string, signs: Signs): Markup {
  const sign = signs.get(name);
  if (sign === undefined) return html`${name}`;
  return html`<span class="colour"
    ><b>${sign.letter}</b
    ><svg class="swatch" viewBox="0 0 32 24" aria-hidden="true" focusable="false">
      <rect x="1" y="1" width="30" height="22" fill="url(#hatch-${sign.hatch})" stroke="#000" stroke-width="1.5" />
    </svg>
    <span>${broken(name)}</span></span
  >`;
}

function inline(part: Inline, signs: Signs): Markup {
  if (typeof part !== "object") return html`${part}`;
  if ("yarn" in part) return colourSign(part.yarn, signs);
  return html`<input type="text" aria-label="${part.blank}" />`;
}

function line(parts: Line, signs: Signs): readonly Markup[] {
  return parts.map((part) => inline(part, signs));
}

const tick: Markup = html`<input type="checkbox" aria-label="done" />`;

const MARKED: Readonly<Partial<Record<Manner, string>>> = {
  MUST: "MUST",
  CHECK: "CHECK",
  ASK: "ASK",
  WAITS: "WAITS",
  caution: "Caution.",
};

export function said({ as, says }: Says, signs: Signs): Markup {
  if (as === "step") return html`<p class="step">${tick}<span>${line(says, signs)}</span></p>`;
  const mark = MARKED[as];
  const marked = mark === undefined ? html`` : html`<span class="mark">${mark}</span> `;
  return html`<p class="${as === "caution" ? "caution" : "said"}">${marked}${line(says, signs)}</p>`;
}

/** A count, or a count and a half: both stand to the right, as large. */
function isNumber(cell: Line | undefined): boolean {
  const [only] = cell?.length === 1 ? cell : [];
  return typeof only === "number" || (typeof only === "string" && /^(?:\d+ )?\d+\/\d+$/u.test(only));
}

/** Words that stay on one line, and rows that stay on one page. */
const [SHORT, TOGETHER] = [9, 6];

function kindOf(cell: Line): string {
  if (isNumber(cell)) return "number";
  if (cell.some((part) => typeof part === "object" && "blank" in part)) return "blank-cell";
  if (cell.some((part) => typeof part === "object" && "yarn" in part)) return "colour-cell";
  return cell.length === 1 && typeof cell[0] === "string" && cell[0].length <= SHORT ? "short" : "words";
}

function rowMarkup(
  { cells, isEdge, note }: TableRow,
  heads: readonly string[],
  tickCell: readonly Markup[],
  signs: Signs,
): Markup {
  const cell = (one: Line, at: number): Markup =>
    html`<td class="${kindOf(one)}" data-head="${heads[at] ?? ""}">${line(one, signs)}</td>`;
  const kind = `${isEdge ? "edge" : "within"}${note === null ? "" : " noted"}`;
  const row = html`<tr class="${kind}">
    ${[...tickCell, ...cells.map(cell)]}
  </tr>`;
  if (note === null) return row;
  return html`${row}
    <tr class="${isEdge ? "edge note" : "note"}">
      <td colspan="${tickCell.length + cells.length}">${note}</td>
    </tr>`;
}

/** A table with a caption that is read aloud; on a narrow screen each row is a card. */
export function tableMarkup({ caption, read, ticked, heads, rows }: Table, signs: Signs): Markup {
  const head = (name: string, at: number): Markup =>
    html`<th scope="col" class="${rows.every(({ cells }) => isNumber(cells[at])) ? "number" : "words"}">${name}</th>`;
  const tickHead = ticked ? [html`<th scope="col">done</th>`] : [];
  const tickCell = ticked ? [html`<td class="tick-cell">${tick}</td>`] : [];
  return html`<table class="${read}${rows.length <= TOGETHER ? " whole" : ""}">
    <caption>
      ${caption}
    </caption>
    <thead>
      <tr>
        ${[...tickHead, ...heads.map(head)]}
      </tr>
    </thead>
    <tbody>
      ${rows.map((row) => rowMarkup(row, heads, tickCell, signs))}
    </tbody>
  </table>`;
}

/** Lines to fill in. */
export function blanksMarkup(what: readonly string[]): Markup {
  const row = (one: string): Markup =>
    html`<div>
      <dt>${one}</dt>
      <dd><input type="text" aria-label="${one}" /></dd>
    </div>`;
  return html`<dl>${what.map(row)}</dl>`;
}
