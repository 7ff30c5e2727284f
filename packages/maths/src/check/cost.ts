import { Decimal } from "../engine/numbers.js";
import { makeQuantity, quantityText } from "../engine/quantity/index.js";
import { inWords } from "../engine/working/index.js";
import { answerOf } from "./hand.js";
import type { Scene } from "./reason.js";
import { IN_EIGHTHS } from "./unit-sizes.js";

/**
 * What a wrong answer costs: the input the declaration names, worked back from it. "finished length 1/4 in short". The answer goes
 * up with that input in a straight line in every formula that names one.
 */
export function costOf({ run, hand, values, inputs }: Scene, exact: number, claimed: number): string | null {
  const name = run.declared.toldIn ?? "";
  const read = inputs.get(name);
  const own = values.get(name);
  if (read?.what !== "quantity" || typeof own !== "number" || own === 0) return null;
  const slope = (answerOf(hand, new Map(values).set(name, own * 2)) - exact) / own;
  const off = new Decimal((claimed - exact) / slope).toSignificantDigits(2);
  const inEighths = IN_EIGHTHS.includes(read.unit.symbol);
  if (!off.isFinite() || off.isZero() || (inEighths && off.abs().lt("0.125"))) return null;
  const amount = quantityText(makeQuantity(read.unit, off.abs()), inEighths ? { step: "1/8" } : undefined);
  return `${inWords(name)} about ${amount} ${off.isNegative() ? "short" : "over"}`;
}
