import { Decimal } from "../numbers.js";
import type { Unit } from "../quantity/index.js";
import { miscopied } from "./miscopied.js";
import { SIBLINGS } from "./sibling-units.js";

/** What is done wrong with an answer that was right: a sentence, and the number it leaves. */
export type AnswerSlip = readonly [says: string, number: Decimal];

/** The right answer with its unit taken for another's. */
export function misnamed(value: Decimal, wanted: Unit<string> | null): readonly AnswerSlip[] {
  if (wanted === null) return [];
  const { symbol: own, scale, dimension } = wanted;
  return (SIBLINGS[dimension] ?? []).flatMap(([symbol, over, under]): AnswerSlip[] => {
    const by = new Decimal(scale[0]).times(under).div(new Decimal(scale[1]).times(over));
    return [
      [`reckons in ${symbol} and calls them ${own}`, value.times(by)],
      [`takes ${own} for ${symbol} and converts them once more`, value.div(by)],
    ];
  });
}

/** The right answer brought to a round number that nobody named. */
export function roundedOff(value: Decimal): readonly AnswerSlip[] {
  return [
    ["brings the answer down to the half", value.times(2).floor().div(2)],
    ["brings the answer up to the half", value.times(2).ceil().div(2)],
    ["brings the answer up to the whole", value.ceil()],
  ];
}

/** The right answer halved, doubled or miscopied. */
export function spoiled(value: Decimal, decimals: number): readonly AnswerSlip[] {
  const written = value.toDecimalPlaces(decimals, Decimal.ROUND_HALF_UP).toFixed(decimals);
  return [
    ["halves the answer, as where pairs are counted for ends", value.div(2)],
    ["doubles the answer, as where pairs are counted twice over", value.times(2)],
    ...miscopied(written).map(([how, text]): AnswerSlip => [
      `writes ${text} for the ${written} it found, ${how},`,
      new Decimal(text),
    ]),
  ];
}
