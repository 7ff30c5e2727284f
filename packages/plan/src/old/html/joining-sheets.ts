import type { WarpPlan } from "../plan/warp-plan.js";
import { joiningPages } from "./joining-pages.js";
import type { JoiningLine, JoiningPage } from "./joining-pages.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { blank, sheet, tickBox } from "./sheet.js";
import { colourSign, signsOf } from "./signs.js";
import type { Sign } from "./signs.js";

const HEADS: readonly (readonly [name: string, millimetres: number])[] = [
  ["tied", 11],
  ["group", 15],
  ["ends", 34],
  ["colour", 42],
  ["how many", 14],
  ["first shaft", 13],
  ["last shaft", 13],
  ["last dent", 16],
];
const LEFT_OVER_WIDTH = 28;

const REST: Markup = html`<tr class="rest">
  <td colspan="${HEADS.length + 2}">Rest here: about 45 minutes of knots since the last rest.</td>
</tr>`;

/** A place for what is left over, as high as the row. */
const LEFT_OVER: Markup = html`<td class="over"><span class="unseen">to fill in</span></td>`;

function row(line: JoiningLine, signs: ReadonlyMap<string, Sign>): Markup {
  if (line === "rest") return REST;
  const { group, firstEnd, lastEnd, colour, ends, firstShaft, lastShaft, lastDent, endsStripe } = line;
  return html`<tr class="${endsStripe ? "stripe-ends" : "within"}">
    <td>${tickBox}</td>
    <td class="number">${group}</td>
    <td class="number">${firstEnd}–${lastEnd}</td>
    <td>${colourSign(colour, signs)}</td>
    <td class="number">${ends}</td>
    <td class="number">${firstShaft}</td>
    <td class="number">${lastShaft}</td>
    <td class="number">${lastDent}</td>
    ${LEFT_OVER} ${LEFT_OVER}
  </tr>`;
}

function head(name: string, millimetres: number): Markup {
  return html`<th scope="col" rowspan="2" style="width: ${millimetres}mm">${name}</th>`;
}

function body({ endOneAt, ends }: WarpPlan, page: JoiningPage, signs: ReadonlyMap<string, Sign>): Markup {
  const { lines, broughtForward, carriedForward } = page;
  const towards = endOneAt === "left" ? "left to right →" : "right to left ←";
  return html`<p>
      <span>End 1 at your <b>${endOneAt.toUpperCase()}</b>; tie from ${towards}</span>
      <span>brought forward: <b>${broughtForward}</b></span>
    </p>
    <table>
      <thead>
        <tr>
          ${HEADS.map(([name, millimetres]) => head(name, millimetres))}
          <th scope="colgroup" colspan="2" style="width: ${LEFT_OVER_WIDTH}mm">left over</th>
        </tr>
        <tr>
          <th scope="col">old</th>
          <th scope="col">new</th>
        </tr>
      </thead>
      <tbody>
        ${lines.map((line) => row(line, signs))}
      </tbody>
    </table>
    <p>
      <span>stopped at end ${blank}</span>
      <span>carried forward: <b>${carriedForward}</b> of ${ends} ends</span>
    </p>`;
}

/** The list that is ticked off knot by knot, at most 20 lines to a page. */
export function joiningSheets(plan: WarpPlan): readonly Markup[] {
  const signs = signsOf(plan);
  const pages = joiningPages(plan.groups);
  return pages.map((page, at) => {
    const number = String(at + 1);
    const heading = `Joining, ${number} of ${String(pages.length)}`;
    return sheet(plan, { name: `joining-${number}`, kind: "knots", heading, body: body(plan, page, signs) });
  });
}
