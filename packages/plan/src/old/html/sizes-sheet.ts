import {
  BOUGHT_HEADS,
  sizeSentences,
  TAKEN_HEADS,
  YARN_ROUNDING,
  yarnAllows,
  yarnBought,
  yarnTaken,
} from "../text/yarn-lines.js";
import { extraInYarn } from "../text/extra-lines.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { columns, ruled, sheet } from "./sheet.js";

/** How wide and long the warp is, and the yarn it takes. */
export function sizesSheet(plan: WarpPlan): readonly Markup[] {
  const body = html`<h3>Width and length</h3>
    ${ruled(sizeSentences(plan))}
    <h3>Yarn</h3>
    ${columns("What the cloth takes", TAKEN_HEADS, yarnTaken(plan))} ${ruled(extraInYarn(plan))}
    ${columns("What there is, and what to buy", BOUGHT_HEADS, yarnBought(plan))} ${ruled(yarnAllows(plan))}
    <p>${YARN_ROUNDING}</p>`;
  return [sheet(plan, { name: "sizes-and-yarn", kind: "plain", heading: "Sizes and yarn", body })];
}
