import { asText, percentLost } from "@thrum/maths";
import type { FoundLoss } from "../plan/found.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { massText, moneyText, percentText } from "./amounts.js";
import { plainText } from "./clean.js";
import { table, wrapped } from "./layout.js";

function lossRow({ what, before, after, loss, fills }: FoundLoss): readonly string[] {
  const lost = loss === null ? "none: it grew" : percentText(loss);
  return [what, asText(before), asText(after), lost, loss === null || fills === null ? "" : fills];
}

/** What the measures of one piece come to. */
export function foundLines({ found }: WarpPlan): readonly string[] {
  if (found === null) {
    return wrapped(
      "Write the measures into the job under found (warpUsed; length onLoom, offLoom, finished; width inReed, atFell, offLoom, finished), and each loss is worked out here, ready for the next job file.",
    );
  }
  const next = found.losses.flatMap(({ loss, fills }) =>
    loss === null || fills === null ? [] : [`  ${fills}: ${String(Number(loss.in(percentLost).toFixed(2)))} % lost`],
  );
  return [
    "Each percentage is of the measure before it.",
    ...table(["what", "before", "after", "lost", "next job file"], found.losses.map(lossRow)),
    "For the next job file:",
    ...next,
  ];
}

/** What one piece costs, and the price that leaves no loss. */
export function costLines({ costs, pieces }: WarpPlan): readonly string[] {
  if (costs === null) {
    return wrapped(
      "Add costs to the job (packagePrices, hours, hourlyRate, others, commission), and the cost of a piece and the least price without a loss are worked out here.",
    );
  }
  const rows = [
    ...costs.yarns.map(({ name, cost }) => [`yarn: ${plainText(name)}, waste in it`, moneyText(cost, "nearest")]),
    ["work, finishing in it", moneyText(costs.work, "nearest")],
    ["others", moneyText(costs.others, "nearest")],
  ];
  return [
    ...table(["for the whole run", "cost"], rows),
    ...wrapped(
      `One of ${String(pieces)} costs ${moneyText(costs.piece, "roundUp")}. Below ${moneyText(costs.floor, "roundUp")} it is sold at a loss once the seller has kept the commission. What a piece is worth is not reckoned here.`,
    ),
  ];
}

/** The fibres of the pieces by mass. */
export function fibreLines({ fibres }: WarpPlan): readonly string[] {
  if (fibres === null) {
    return wrapped(
      "Add fibres to the job (for each its regain and its yarns), and the share of each is worked out here.",
    );
  }
  const rows = fibres.map(({ fibre, mass, byDryMass, byConditionedMass }) => [
    plainText(fibre),
    massText(mass, mass, "roundUp"),
    percentText(byDryMass),
    percentText(byConditionedMass),
  ]);
  return [
    ...table(["fibre", "in the pieces", "by dry mass", "with the agreed regain"], rows),
    ...wrapped(
      "Reckoned from the yarn left in the pieces, not from the waste. Which mass counts, which regain, how it is rounded and what else a label must say the law of the place of sale decides: ask there.",
    ),
  ];
}

/** The first inches against the plan. */
export function firstInchesLines({ firstInches, widthInReed }: WarpPlan): readonly string[] {
  if (firstInches === null) return [];
  const { picksPlanned, picksFound, widthAtFell, drawIn } = firstInches;
  const narrower = drawIn === null ? "it does not draw in" : `it draws in by ${percentText(drawIn)} of that`;
  return wrapped(
    `First inches: ${String(picksPlanned)} planned, ${String(picksFound)} found; the weft is reckoned from what was found. Width in the reed ${asText(widthInReed)}, at the fell ${asText(widthAtFell)}: ${narrower}.`,
  );
}
