import { Decimal } from "../../engine/numbers.js";
import { genuineUnit } from "../../engine/quantity/index.js";
import type { DentsPerLength, EndsPerLength } from "../../units/index.js";

/** Ends to each dent, in the mean, of a sett in a reed; both already read. */
export function endsADent(sett: EndsPerLength, reed: DentsPerLength): Decimal {
  const sizeOf = (quantity: EndsPerLength | DentsPerLength): readonly [Decimal, number] => {
    const [over, under] = genuineUnit(quantity)?.scale ?? [Number.NaN, 1];
    return [new Decimal(quantity.value).times(over), under];
  };
  const [ends, endsUnder] = sizeOf(sett);
  const [dents, dentsUnder] = sizeOf(reed);
  return ends.times(dentsUnder).div(dents.times(endsUnder));
}
