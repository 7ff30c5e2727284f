import { Decimal } from "../numbers.js";
import { makeQuantity, quantityText } from "../quantity/index.js";
import { inWords } from "../working/index.js";
import { answerOf } from "./hand.js";
import type { Scene } from "./reason.js";

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
  const inInches = read.unit.symbol === "in";
  if (!off.isFinite() || off.isZero() || (inInches && off.abs().lt("0.125"))) return null;
  const amount = quantityText(makeQuantity(read.unit, off.abs()), inInches ? { step: "1/8" } : undefined);
  return `${inWords(name)} about ${amount} ${off.isNegative() ? "short" : "over"}`;
}
