import type { Decimal } from "../../engine/numbers.js";
import type { ReadingOptions } from "./amount.js";
import { marksFor } from "./marks-for.js";
import { amountAt } from "./numerals.js";
import type { RefuseText } from "./text-given.js";
import { tokensOf } from "./tokens.js";

const VULGAR = "[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]";
const WHOLE = String.raw`\d{1,3}(?:[ \u00a0\u2009\u202f]\d{3})+(?!\d)(?:[.,]\d+)?|\d[\d.,]*|[.,]\d+`;
const FRACTION = String.raw`\d{1,9}[/⁄]\d{1,9}`;

/** A number in front of a text: whole, decimal, or with a fraction after it. */
const NUMBER = /* @__PURE__ */ new RegExp(
  `^(?:(?:${WHOLE})(?:[ -]?(?:${VULGAR}|(?<=[ -])${FRACTION}))?|${VULGAR})`,
  "u",
);
const BARE_FRACTION = /* @__PURE__ */ new RegExp(`^${FRACTION}(?![\\d/⁄])`, "u");

/** What a text begins with and what comes after it. */
export interface Led {
  readonly value: Decimal;
  readonly rest: string;
}

/**
 * The number a text begins with; null where it begins with none. A bare `1/2` is a fraction, but between the numbers of a
 * yarn, where it is two.
 */
export function leadingNumber(
  text: string,
  options: ReadingOptions | undefined,
  refuse: RefuseText,
  slash: "fraction" | "two numbers" = "fraction",
): Led | null {
  const bare = slash === "fraction" ? BARE_FRACTION.exec(text) : null;
  const [found] = bare ?? NUMBER.exec(text) ?? [];
  if (found === undefined) return null;
  // Where a locale is named a plain space between three digits and three groups them, as its own mark does.
  const grouped = options === undefined ? found : found.replace(/(?<=\d) (?=\d{3}(?!\d))/gu, "\u202f");
  const tokens = tokensOf(grouped) ?? [];
  const amount = amountAt(tokens, 0, marksFor(options));
  if (amount?.[1] === tokens.length) return { value: amount[0], rest: text.slice(found.length).trim() };
  if (found.includes(",") && options === undefined)
    return refuse(
      "ambiguous",
      'A comma may mark decimals or thousands: name the locale, for example { locale: "de" }.',
      [found.replace(",", "."), found.replaceAll(",", "")],
    );
  return refuse("unreadable", "Write a whole number, a decimal or a fraction such as 3 1/2.");
}
