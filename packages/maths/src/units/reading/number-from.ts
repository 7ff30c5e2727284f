import { decimalText, kept } from "../../engine/numbers.js";
import type { ReadingOptions } from "./amount.js";
import { leadingNumber } from "./leading-number.js";
import { refusalsOf, textGiven } from "./text-given.js";

/**
 * A plain number from text as people write it, as the decimal text that every unit takes: no digit is lost on the way.
 *
 * @param text such as `12`, `1.5`, `.5`, `17 1/3`, `½`, with a minus before it or none
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "unreadable", or "ambiguous" for a comma without a locale
 * @example decimalTextFrom("17 1/2") // "17.5"
 */
export function decimalTextFrom(text: string, options?: ReadingOptions): string {
  const refuse = refusalsOf("decimalTextFrom", "a number", "12.5", text);
  const given = textGiven(text, refuse);
  const unsigned = given.replace(/^[-−]\s?/u, "");
  const led = leadingNumber(unsigned, options, refuse);
  if (led?.rest !== "") return refuse("unreadable", "Write a number alone, such as 12.5 or 3 1/2.");
  return decimalText(kept(unsigned === given ? led.value : led.value.negated()));
}

/**
 * A plain number from text as people write it.
 *
 * @param text such as `12`, `1.5`, `17 1/3`, `1 000`
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "unreadable", or "ambiguous" for a comma without a locale
 * @example numberFrom("27,5", { locale: "de" }) // 27.5
 */
export function numberFrom(text: string, options?: ReadingOptions): number {
  return Number(decimalTextFrom(text, options));
}
