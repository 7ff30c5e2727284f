import type { WarpPlan } from "../plan/warp-plan.js";
import { LOSS_HEADS, lossRow, nextJob, TO_BE_FOUND } from "../text/after-lines.js";
import { measuredText } from "../text/amounts.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { blank, columns, ruled, sheet } from "./sheet.js";

/** What the measures written into the job come to. */
function foundParts({ found }: WarpPlan): Markup {
  if (found === null) return html`<p>${TO_BE_FOUND}</p>`;
  return html`${columns("Found, each of the measure before it", LOSS_HEADS, found.losses.map(lossRow))}
    <p>For the next job file:</p>
    ${ruled(nextJob(found.losses))}`;
}

/** Width and length at four moments: what the next job file is made of. */
export function fourMeasuresSheet(plan: WarpPlan): readonly Markup[] {
  const { widthInReed, finishedWidth, pieceTape } = plan;
  const planned = { reed: measuredText(widthInReed, "nearest"), finished: measuredText(finishedWidth, "nearest") };
  const woven = measuredText(pieceTape.wovenLength, "nearest");
  const rows = [
    ["in the reed", planned.reed, blank, "", ""],
    ["on the loom, at weaving tension", "", blank, woven, blank],
    ["off the loom, rested a night", "", blank, "", blank],
    ["finished: washed, dried, pressed", planned.finished, blank, "", blank],
  ];
  const heads = ["when", "width planned", "width found", "piece planned", "piece found"];
  const body = html`<p>
      Measure the same piece each time. From these come the narrowing, the relaxation and the loss in the wash, each as
      a part of the measure before it.
    </p>
    ${columns("The four measures", heads, rows)} ${foundParts(plan)}
    <p>Hot water and wet cloth scald: let it cool before you lift it, and try the wash on a sample first.</p>`;
  return [sheet(plan, { name: "four-measures", kind: "plain", heading: "Four measures", body })];
}
