import { Decimal } from "../numbers.js";
import { makeQuantity, quantityText } from "../quantity/index.js";
import { outOfFrame, stepsOf } from "../formula/index.js";
import type { Run } from "../formula/index.js";
import { rearrangement } from "../solve/index.js";
import { inWords } from "../working/index.js";

/** What a wrong answer costs: the input the declaration names, worked back from it. "finished length 1/4 in short". */
export function costOf({ declared, inputs, values, frame, nearness }: Run, claimed: Decimal): string | null {
  const name = declared.costIn;
  const read = name === null ? undefined : inputs.get(name);
  const turned = name === null ? null : rearrangement(declared, name);
  if (name === null || read?.what !== "quantity" || turned?.ok !== true) return null;
  const known = new Map([...values, [turned.answer, claimed] as const]);
  const { steps, failed } = stepsOf(turned.lines, known, nearness);
  const worth = steps.at(-1)?.value;
  if (failed !== null || !(worth instanceof Decimal)) return null;
  const off = outOfFrame(frame, worth, read.unit).minus(read.value);
  const size = makeQuantity(read.unit, off.abs().toSignificantDigits(2));
  const eighths = read.unit.symbol === "in" && off.abs().gte("0.125");
  const amount = quantityText(size, eighths ? { step: "1/8" } : undefined);
  return off.isZero() ? null : `${inWords(name)} about ${amount} ${off.isNegative() ? "short" : "over"}`;
}
