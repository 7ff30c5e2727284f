import { reading } from "../../engine/refusal.js";
import type { Reading } from "../../engine/refusal.js";
import type { Unit } from "../../engine/quantity/index.js";
import type { Mass } from "../kinds.js";
import { amountFrom } from "./amount.js";
import type { ReadingOptions } from "./amount.js";
import { quantityFrom } from "./quantity-from.js";

/**
 * A mass from text as people write it, or from the data of a copied quantity.
 *
 * @param given text such as `1 lb 8 oz`, `200 g`, `1/2 lb`, or data as JSON wrote it
 * @param units the units the text may use
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "unreadable", "ambiguous" (two readings) or "unknown-unit"
 * @example massFrom("1 lb 8 oz", [pounds, ounces]).in(ounces) // 24
 */
export function massFrom(given: unknown, units: readonly Unit<"mass">[], options?: ReadingOptions): Mass {
  return typeof given === "string" ? amountFrom("massFrom", "mass", given, units, options) : quantityFrom(given, units);
}

/**
 * As `massFrom`, but what cannot be read comes back as data instead of an error.
 *
 * @example massReading("8 oz", [ounces]).ok // true
 */
export function massReading(given: unknown, units: readonly Unit<"mass">[], options?: ReadingOptions): Reading<Mass> {
  return reading(() => massFrom(given, units, options));
}
