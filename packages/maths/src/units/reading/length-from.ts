import { reading } from "../../engine/refusal.js";
import type { Reading } from "../../engine/refusal.js";
import type { Unit } from "../../engine/quantity/index.js";
import type { Length } from "../kinds.js";
import { amountFrom } from "./amount.js";
import type { ReadingOptions } from "./amount.js";
import { quantityFrom } from "./quantity-from.js";

/**
 * A length from text as people write it, or from the data of a copied quantity.
 *
 * @param given text such as `2 yd 6 in`, `6'6"`, `3 1/2 in`, `3½ in`, or data as JSON wrote it
 * @param units the units the text may use
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "unreadable", "ambiguous" (two readings) or "unknown-unit"
 * @example lengthFrom("2 yd 6 in", [yards, feet, inches]).in(inches) // 78
 */
export function lengthFrom(given: unknown, units: readonly Unit<"length">[], options?: ReadingOptions): Length {
  return typeof given === "string"
    ? amountFrom("lengthFrom", "length", given, units, options)
    : quantityFrom(given, units);
}

/**
 * As `lengthFrom`, but what cannot be read comes back as data instead of an error.
 *
 * @example lengthReading("27 in", [inches]).ok // true
 */
export function lengthReading(
  given: unknown,
  units: readonly Unit<"length">[],
  options?: ReadingOptions,
): Reading<Length> {
  return reading(() => lengthFrom(given, units, options));
}
