import { compare, currency, grams, inches, inUnit, percentAdded, percentLost, QuantityError } from "@thrum/maths";
import type { Addition, Length, Loss, Mass, Money, Quantity } from "@thrum/maths";
import * as v from "valibot";
import type { AmountSchemas } from "./amounts.js";

/** Whether the maths take the value for a quantity of this kind; a copy of one is refused like anything else. */
function takes(use: () => unknown): boolean {
  try {
    use();
    return true;
  } catch (error) {
    if (error instanceof QuantityError) return false;
    throw error;
  }
}

function made<Q extends Quantity<string>>(what: string, use: (value: Q) => unknown): v.GenericSchema<unknown, Q> {
  return v.custom<Q>(
    (value) => takes(() => use(value as Q)),
    `${what}|Make it with a unit, such as inches(16), grams(200) or percentLost(9); a copy is only data.`,
  );
}

const addition: v.GenericSchema<unknown, Addition> = made<Addition>("a percentage added", (value) =>
  inUnit(value, percentAdded),
);

const loss: v.GenericSchema<unknown, Loss> = made<Loss>("a percentage lost", (value) => inUnit(value, percentLost));

/** Amounts a program made with the units of the maths. */
export const madeAmounts: AmountSchemas = {
  length: made<Length>("a length", (value) => inUnit(value, inches)),
  mass: made<Mass>("a mass", (value) => inUnit(value, grams)),
  loss: v.pipe(
    loss,
    v.check(
      (value) => compare(value, percentLost(0)) >= 0 && compare(value, percentLost(100)) < 0,
      "a loss of 0 % or more and less than 100 %|",
    ),
  ),
  addition: v.pipe(
    addition,
    v.check((value) => compare(value, percentAdded(0)) >= 0, "an addition of 0 % or more|"),
  ),
  money: made<Money>("an amount of money", (value) =>
    inUnit(value, currency(String((Object(value) as Partial<Money>).unit))),
  ),
};
