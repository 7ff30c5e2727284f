import { Decimal } from "../numbers.js";
import { makeQuantity, quantityText } from "../quantity/index.js";
import { outOfFrame } from "../formula/index.js";
import type { Run } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { numberFor } from "./number-for.js";
import { roughly } from "./roughly.js";

/** What a wrong answer costs: the input the declaration names, worked back from it. "finished length 1/4 in short". */
export function costOf({ declared, inputs, values, frame }: Run, claimed: Decimal): string | null {
  const name = declared.costIn ?? "";
  const read = inputs.get(name);
  const worth = numberFor(declared.lines, roughly(values), name, claimed.toNumber());
  if (read?.what !== "quantity" || worth === null) return null;
  const off = outOfFrame(frame, new Decimal(worth), read.unit).minus(read.value).toSignificantDigits(2);
  const eighths = read.unit.symbol === "in" && off.abs().gte("0.125");
  const amount = quantityText(makeQuantity(read.unit, off.abs()), eighths ? { step: "1/8" } : undefined);
  return off.isZero() ? null : `${inWords(name)} about ${amount} ${off.isNegative() ? "short" : "over"}`;
}
