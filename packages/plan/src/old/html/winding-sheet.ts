import type { WarpPlan } from "../plan/warp-plan.js";
import { yarnText } from "../text/amounts.js";
import { EXTRA_HEADS, EXTRA_SAYS, extraRows } from "../text/extra-lines.js";
import { LEASE, meanwhileText, roundsText } from "../text/winding-lines.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { columns, sheet, tickBox } from "./sheet.js";
import { colourSign, signsOf } from "./signs.js";

const HEADS = ["wound", "colour", "ends", "rounds", "so far", "meanwhile"];

/** What is wound beside the warp. */
function extra(plan: WarpPlan): readonly Markup[] {
  if (plan.extraEnds.length === 0) return [];
  const rows = extraRows(plan).map((row) => [tickBox, ...row]);
  return [html`<div class="whole">${columns(`Beside the warp. ${EXTRA_SAYS}`, ["wound", ...EXTRA_HEADS], rows)}</div>`];
}

/** What stands at the warping board or reel: every chain, stripe by stripe. */
export function windingSheet(plan: WarpPlan): readonly Markup[] {
  const signs = signsOf(plan);
  const { threadsTogether, winding, warpLength } = plan;
  const threads = threadsTogether === 1 ? "1 thread" : `${String(threadsTogether)} threads together`;
  const chains = winding.map(({ chain, firstEnd, lastEnd, ends, stripes }) =>
    columns(
      `Chain ${String(chain)}: ends ${String(firstEnd)} to ${String(lastEnd)}, ${String(ends)} in all`,
      HEADS,
      stripes.map((stripe) => [
        tickBox,
        colourSign(stripe.colour, signs),
        stripe.ends,
        roundsText(stripe),
        stripe.runningTotal,
        meanwhileText(stripe),
      ]),
    ),
  );
  const body = html`<p>
      Wind ${threads}, <b>${yarnText(warpLength, "roundUp")}</b> from end to end. Begin each chain at the near peg; a
      round is there and back. ${LEASE}
    </p>
    ${chains} ${extra(plan)}`;
  return [sheet(plan, { name: "winding", kind: "plain", heading: "Winding", body })];
}
