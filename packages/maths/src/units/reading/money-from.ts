import { decimalText, kept } from "../../engine/numbers.js";
import type { Money } from "../kinds.js";
import { currency } from "../money.js";
import type { ReadingOptions } from "./amount.js";
import { leadingNumber } from "./leading-number.js";
import { refusalsOf, textGiven } from "./text-given.js";

/** A sign that several currencies share says none of them. */
const SHARED: Readonly<Record<string, readonly string[]>> = {
  $: ["USD", "CAD", "AUD", "NZD"],
  "£": ["GBP", "EGP", "SHP"],
  "¥": ["JPY", "CNY"],
};

/**
 * Money from text, its currency before or after it: `14.50 EUR`, `EUR 14.50`, `€14.50`.
 *
 * @param text an amount and the code or name of its currency
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "ambiguous" for a sign that several currencies share, "unknown-unit" for an amount without one
 * @example moneyFrom("EUR 14.50").toString() // "14.5 EUR"
 */
export function moneyFrom(text: string, options?: ReadingOptions): Money {
  const refuse = refusalsOf("moneyFrom", "an amount with its currency", "14.50 EUR", text);
  const given = textGiven(text, refuse);
  const [, before = "", behind = given] = /^([A-Za-z]{1,20}|[€$£¥]) ?(.+)$/u.exec(given) ?? [];
  const led = leadingNumber(behind, options, refuse);
  if (led === null) return refuse("unreadable", "Write a number and a currency: 14.50 EUR.");
  const name = (before === "" ? led.rest : before).replace("€", "EUR");
  const many = decimalText(kept(led.value));
  const meant = Object.hasOwn(SHARED, name) ? SHARED[name] : undefined;
  if (meant !== undefined) {
    const candidates = meant.map((code) => `${many} ${code}`);
    return refuse("ambiguous", `Which currency? Write ${candidates.join(" or ")}.`, candidates);
  }
  const isCurrency = /^[A-Za-z]{1,20}$/u.test(name) && (before === "" || led.rest === "");
  return isCurrency ? currency(name)(many) : refuse("unknown-unit", "Name the currency: 14.50 EUR.");
}
