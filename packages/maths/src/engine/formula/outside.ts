import { Decimal } from "../numbers.js";
import { isPercent } from "../quantity/index.js";
import type { Unit } from "../quantity/index.js";
import type { Range } from "./input.js";

/** −1, 0 or 1 as an amount is below, at or above a bound, which is counted in base units: for zero the sign is enough. */
function against(bound: number, value: Decimal, unit: Unit<string> | null): number {
  if (bound === 0) return value.isZero() ? 0 : value.s;
  const [over, under] = unit?.scale ?? [1, 1];
  const counted = over === 1 ? value : value.times(over);
  const limit = bound * under;
  if (!Number.isSafeInteger(limit)) return counted.comparedTo(new Decimal(bound).times(under));
  // Fewer digits than the bound has, and nothing need be compared.
  return limit > 0 && 10 ** (counted.e + 1) <= limit ? -1 : counted.comparedTo(limit);
}

/** The first thing wrong with an amount for a range, in words; null when it lies inside. */
export function outside(
  value: Decimal,
  unit: Unit<string> | null,
  { atLeast, above, below, atMost }: Range,
): string | null {
  const told = (limit: number): string => (isPercent(unit) ? `${String(limit * 100)} %` : String(limit));
  if (atLeast !== null && against(atLeast, value, unit) < 0) return `${told(atLeast)} or more`;
  if (above !== null && against(above, value, unit) <= 0) return `more than ${told(above)}`;
  if (below !== null && against(below, value, unit) >= 0) return `less than ${told(below)}`;
  if (atMost !== undefined && against(atMost, value, unit) > 0) return `no more than ${told(atMost)}`;
  return null;
}
