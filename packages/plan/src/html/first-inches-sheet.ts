import type { WarpPlan } from "../plan/warp-plan.js";
import { measuredText } from "../text/amounts.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { blank, columns, sheet } from "./sheet.js";

/** From the last knot to the first inches of cloth, which say whether the plan holds. */
export function firstInchesSheet(plan: WarpPlan): readonly Markup[] {
  const { position, sett, widthInReed } = plan;
  const rows = [
    ["ends in the reed, to the measure", String(sett), blank],
    ["width in the reed", measuredText(widthInReed, "nearest"), blank],
    ["width of the cloth at the fell", blank, blank],
    ["picks at weaving tension, to the measure", blank, blank],
  ];
  const body = html`<p>${position.afterTying}</p>
    <p>
      Lift one shaft after the other and look across: an end that hangs, or two of one colour where the stripe has
      ended, is mended now. Then weave a few inches, count and measure at weaving tension. Where planned and found
      differ, plan again with what was found before the first piece is begun.
    </p>
    ${columns("Counted and measured", ["what", "planned", "found"], rows)}`;
  return [sheet(plan, { name: "first-inches", kind: "plain", heading: "First inches", body })];
}
