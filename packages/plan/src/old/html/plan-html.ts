import { refuseUnlessPlan } from "../plan/brand.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { beforeCuttingSheet } from "./before-cutting-sheet.js";
import { countSheet } from "./count-sheet.js";
import { firstInchesSheet } from "./first-inches-sheet.js";
import { fourMeasuresSheet } from "./four-measures-sheet.js";
import { joiningSheets } from "./joining-sheets.js";
import { layingSheet } from "./laying-sheet.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { raddleSheet } from "./raddle-sheet.js";
import { hatchPatterns } from "./signs.js";
import { recordSheet } from "./record-sheet.js";
import { sizesSheet } from "./sizes-sheet.js";
import { STYLE } from "./style.js";
import { tapeSheets } from "./tape-sheets.js";
import { windingSheet } from "./winding-sheet.js";
import { workingsSheet } from "./workings-sheet.js";

type Sheets = (plan: WarpPlan) => readonly Markup[];

/** Every place of work in the order of the work: a new one is a line here. */
const SHEETS: readonly Sheets[] = [
  beforeCuttingSheet,
  countSheet,
  sizesSheet,
  windingSheet,
  raddleSheet,
  layingSheet,
  joiningSheets,
  firstInchesSheet,
  tapeSheets,
  fourMeasuresSheet,
  recordSheet,
  workingsSheet,
];

const POLICY = "default-src 'none'; style-src 'unsafe-inline'";

/**
 * A plan as one page of HTML that needs nothing else, to be printed on A4 or Letter: a new sheet for each place of work.
 *
 * @param plan what `planWarp` gives
 * @throws QuantityError for anything else, a copy of a plan too
 */
export function planHtml(plan: WarpPlan): string {
  refuseUnlessPlan("planHtml(plan)", plan);
  const style = { markup: STYLE };
  const { markup } = html`<!doctype html>
    <html lang="en-GB">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content="${POLICY}" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${plan.title}</title>
        <style>
          ${style}
        </style>
      </head>
      <body>
        <main>
          ${hatchPatterns}
          <h1>${plan.title}</h1>
          <p>${plan.note}</p>
          ${SHEETS.map((sheets) => sheets(plan)).flat()}
        </main>
      </body>
    </html>`;
  return markup;
}
