import { asText, percentLost } from "@thrum/maths";
import type { FibreContent } from "../plan/content.js";
import type { CostPlan } from "../plan/costs.js";
import type { FoundLoss } from "../plan/found.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { massText, moneyText, percentText } from "./amounts.js";
import { plainText } from "./clean.js";
import { table, wrapped } from "./layout.js";

export const LOSS_HEADS: readonly string[] = ["what", "before", "after", "lost", "next job file"];

/** A loss found, as it stands in a table. */
export function lossRow({ what, before, after, loss, fills }: FoundLoss): readonly string[] {
  const lost = loss === null ? "none: it grew" : percentText(loss);
  return [what, asText(before), asText(after), lost, loss === null || fills === null ? "" : fills];
}

export const TO_BE_FOUND =
  "Write the measures into the job under found (warpUsed; length onLoom, offLoom, finished; width inReed, atFell, offLoom, finished), and each loss is worked out here, ready for the next job file.";

/** The percentages as the next job file wants them. */
export function nextJob(losses: readonly FoundLoss[]): readonly string[] {
  return losses.flatMap(({ loss, fills }) =>
    loss === null || fills === null ? [] : [`${fills}: ${String(Number(loss.in(percentLost).toFixed(2)))} % lost`],
  );
}

/** What the measures of one piece come to. */
export function foundLines({ found }: WarpPlan): readonly string[] {
  if (found === null) return wrapped(TO_BE_FOUND);
  return [
    "Each percentage is of the measure before it.",
    ...table(LOSS_HEADS, found.losses.map(lossRow)),
    "For the next job file:",
    ...nextJob(found.losses).map((line) => `  ${line}`),
  ];
}

/** What is needed to reckon the cost, or what it comes to. */
export function costSentence({ costs, pieces }: WarpPlan): string {
  return costs === null
    ? "Add costs to the job (packagePrices, hours, hourlyRate, others, commission), and the cost of a piece and the least price without a loss are worked out here."
    : `One of ${String(pieces)} costs ${moneyText(costs.piece, "roundUp")}. Below ${moneyText(costs.floor, "roundUp")} it is sold at a loss once the seller has kept the commission. What a piece is worth is not reckoned here.`;
}

export const COST_HEADS: readonly string[] = ["for the whole run", "cost"];

/** The costs of the run, one by one. */
export function costRows(costs: CostPlan): readonly (readonly string[])[] {
  return [
    ...costs.yarns.map(({ name, cost }) => [`yarn: ${plainText(name)}, waste in it`, moneyText(cost, "nearest")]),
    ["work, finishing in it", moneyText(costs.work, "nearest")],
    ["others", moneyText(costs.others, "nearest")],
  ];
}

/** What one piece costs, and the price that leaves no loss. */
export function costLines(plan: WarpPlan): readonly string[] {
  const { costs } = plan;
  return [...(costs === null ? [] : table(COST_HEADS, costRows(costs))), ...wrapped(costSentence(plan))];
}

/** What is needed to reckon the fibres, or whose word they are. */
export function fibreSentence({ fibres }: WarpPlan): string {
  return fibres === null
    ? "Add fibres to the job (for each its regain and its yarns), and the share of each is worked out here."
    : "Reckoned from the yarn left in the pieces, not from the waste. Which mass counts, which regain, how it is rounded and what else a label must say the law of the place of sale decides: ask there.";
}

export const FIBRE_HEADS: readonly string[] = ["fibre", "in the pieces", "by dry mass", "with the agreed regain"];

/** The shares of the fibres. */
export function fibreRows(fibres: readonly FibreContent[]): readonly (readonly string[])[] {
  return fibres.map(({ fibre, mass, byDryMass, byConditionedMass }) => [
    plainText(fibre),
    massText(mass, mass, "roundUp"),
    percentText(byDryMass),
    percentText(byConditionedMass),
  ]);
}

/** The fibres of the pieces by mass. */
export function fibreLines(plan: WarpPlan): readonly string[] {
  const { fibres } = plan;
  return [...(fibres === null ? [] : table(FIBRE_HEADS, fibreRows(fibres))), ...wrapped(fibreSentence(plan))];
}

/** The first inches against the plan, once they are woven. */
export function firstInchesSentences({ firstInches, widthInReed }: WarpPlan): readonly string[] {
  if (firstInches === null) return [];
  const { picksPlanned, picksFound, widthAtFell, drawIn } = firstInches;
  const narrower = drawIn === null ? "it does not draw in" : `it draws in by ${percentText(drawIn)} of that`;
  return [
    `First inches: ${String(picksPlanned)} planned, ${String(picksFound)} found; the weft is reckoned from what was found. Width in the reed ${asText(widthInReed)}, at the fell ${asText(widthAtFell)}: ${narrower}.`,
  ];
}

/** The same in lines. */
export function firstInchesLines(plan: WarpPlan): readonly string[] {
  return firstInchesSentences(plan).flatMap((line) => wrapped(line));
}
