import type { WarpPlan } from "../plan/warp-plan.js";
import { firstInchesSentences } from "../text/after-lines.js";
import { measuredText } from "../text/amounts.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { blank, columns, ruled, sheet, tickBox } from "./sheet.js";
import { colourSign, signsOf } from "./signs.js";

/** What rises with each shaft, colour by colour. */
function sheds(plan: WarpPlan): Markup {
  const signs = signsOf(plan);
  const rows = plan.shedProof.flatMap(({ shaft, ends, colours }) =>
    colours.map(({ colour, ends: own }) => [tickBox, shaft, colourSign(colour, signs), own, ends]),
  );
  return columns("With one shaft up", ["seen", "shaft", "colour", "of this colour", "in all"], rows);
}

/** From the last knot to the first inches of cloth, which say whether the plan holds. */
export function firstInchesSheet(plan: WarpPlan): readonly Markup[] {
  const { position, sett, weftYarn, widthInReed } = plan;
  const picks = plan.firstInches?.picksPlanned ?? plan.picks;
  const rows = [
    ["ends, counted in the reed", String(sett), blank],
    ["width in the reed", measuredText(widthInReed, "nearest"), blank],
    ["width of the cloth at the fell", "", blank],
    [`picks of ${weftYarn}, counted at weaving tension`, String(picks), blank],
  ];
  const body = html`<p>${position.afterTying}</p>
    <p>
      Lift one shaft after the other and look across. Where a number is another than here, two ends are crossed or one
      is missing: it is mended now.
    </p>
    ${sheds(plan)}
    <p>
      Then weave a few inches, count and measure at weaving tension. Where planned and found differ, plan again with
      what was found before the first piece is begun.
    </p>
    ${ruled(firstInchesSentences(plan))} ${columns("Counted and measured", ["what", "planned", "found"], rows)}`;
  return [sheet(plan, { name: "first-inches", kind: "plain", heading: "First inches", body })];
}
