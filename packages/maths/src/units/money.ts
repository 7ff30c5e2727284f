import { described, unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { QuantityError } from "../engine/refusal.js";

const ALONE = "Change it to one currency first, at the rate of your day.";

/**
 * The unit of a currency, by its code or its name in letters. Money of one currency is never told in another.
 *
 * @param name as it should be printed after the amount: "EUR", "pence"
 * @throws QuantityError "unreadable" for anything but 1 to 20 letters
 * @example currency("EUR")("12.50").toString() // "12.5 EUR"
 */
export function currency(name: string): Unit<"money"> {
  const given: unknown = name;
  if (typeof given !== "string" || !/^[A-Za-z]{1,20}$/u.test(given)) {
    throw new QuantityError({
      code: "unreadable",
      function: "currency",
      path: ["name"],
      expected: "the code or the name of a currency, 1 to 20 letters",
      received: described(given),
      remedy: 'Write currency("EUR").',
    });
  }
  return unit({ dimension: "money", name: given, symbol: given, size: [1, 1], alone: ALONE });
}
