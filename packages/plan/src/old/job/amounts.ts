import { compare, times } from "@thrum/maths";
import type { Addition, Length, Loss, Mass, Money, Quantity } from "@thrum/maths";
import * as v from "valibot";

/** How the amounts of a job are read: from the words of a file, or from quantities a program made. */
export interface AmountSchemas {
  readonly length: v.GenericSchema<unknown, Length>;
  readonly mass: v.GenericSchema<unknown, Mass>;
  readonly loss: v.GenericSchema<unknown, Loss>;
  readonly addition: v.GenericSchema<unknown, Addition>;
  readonly money: v.GenericSchema<unknown, Money>;
}

function sign<D extends string>(quantity: Quantity<D>): number {
  return compare(quantity, times(quantity, 0));
}

/** An amount above zero. */
export function some<Q extends Quantity<string>>(
  schema: v.GenericSchema<unknown, Q>,
  noun: string,
): v.GenericSchema<unknown, Q> {
  return v.pipe(
    schema,
    v.check((amount) => sign(amount) > 0, `a ${noun} above zero|`),
  );
}

/** An amount that may be nothing. */
export function any<Q extends Quantity<string>>(
  schema: v.GenericSchema<unknown, Q>,
  noun: string,
): v.GenericSchema<unknown, Q> {
  return v.pipe(
    schema,
    v.check((amount) => sign(amount) >= 0, `a ${noun} of zero or more|`),
  );
}
