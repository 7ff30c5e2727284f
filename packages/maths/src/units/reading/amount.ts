import { Decimal, kept } from "../../engine/numbers.js";
import { areUnitsOf, described, makeQuantity } from "../../engine/quantity/index.js";
import type { Quantity, Unit } from "../../engine/quantity/index.js";
import { QuantityError } from "../../engine/refusal.js";
import type { RefusalCode } from "../../engine/refusal.js";
import { amountAt, marksOf } from "./numerals.js";
import type { Token } from "./tokens.js";
import { tokensOf } from "./tokens.js";

/** How the numerals are written; without a locale a comma is refused. */
export interface ReadingOptions {
  readonly locale: string;
}

const LONGEST = 200;

/** Beside its name and symbol, what people write for a unit. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  inches: ["inch", "ins", '"', "”", "″", "''", "’’", "′′"],
  feet: ["foot", "'", "’", "′"],
  yards: ["yard", "yds"],
  millimetres: ["millimetre", "millimeter", "millimeters"],
  centimetres: ["centimetre", "centimeter", "centimeters", "cms"],
  metres: ["metre", "meter", "meters"],
  kilometres: ["kilometre", "kilometer", "kilometers"],
  grams: ["gram", "gramme", "grammes", "gms"],
  kilograms: ["kilogram", "kilo", "kilos", "kgs"],
  pounds: ["pound", "lbs"],
  ounces: ["ounce"],
  grains: ["grain"],
  drams: ["dram"],
};

function unitFor<D extends string>(word: string, units: readonly Unit<D>[]): Unit<D> | undefined {
  const wanted = word.toLowerCase();
  return units.find(({ name, symbol }) => [name, symbol, ...(SPELLINGS[name] ?? [])].includes(wanted));
}

/**
 * Reads an amount of one or more parts, each with its unit, from large to small: `2 yd 6 in`, `6'6"`, `3 1/2 in`.
 * No part is ever dropped; a leading minus governs the whole.
 */
export function amountFrom<D extends string>(
  reader: string,
  dimension: D,
  text: string,
  units: readonly Unit<D>[],
  options: ReadingOptions | undefined,
): Quantity<D> {
  const refuse = (code: RefusalCode, remedy: string): never => {
    const expected = `an amount in ${units.map(({ name }) => name).join(", ")}, such as 3 1/2 ${units[0]?.symbol ?? ""}`;
    throw new QuantityError({ code, where: `${reader}(text)`, expected, received: described(text), remedy });
  };
  if (!areUnitsOf(dimension, units)) {
    return refuse("unknown-unit", "Give the units the text may use, for example [yards, feet, inches].");
  }
  if (text.length > LONGEST)
    return refuse("unreadable", `Text of more than ${String(LONGEST)} characters is not read.`);
  const tokens = tokensOf(text);
  if (tokens === null || tokens.length === 0) return refuse("unreadable", "Write a number and its unit.");
  const marks = marksOf(options?.locale ?? null);
  const negative = tokens[0]?.kind === "hyphen";
  let at = negative ? 1 : 0;
  let sum = new Decimal(0);
  let last: Unit<D> | null = null;
  while (at < tokens.length) {
    if (last !== null && tokens[at]?.kind === "hyphen") {
      if (tokens[at]?.spaced === true) return refuse("ambiguous", "A sign stands only before the whole amount.");
      at += 1;
    }
    const [value, next] = amountAt(tokens, at, marks) ?? refuse("unreadable", commaRemedy(tokens[at], options));
    const word = tokens[next];
    if (word?.kind === "slash")
      return refuse("unreadable", "A fraction is a whole number over another that is not zero.");
    if (word?.kind === "digits" || word?.kind === "vulgar" || word?.kind === "hyphen") {
      return refuse("ambiguous", "Two numbers stand side by side: write one number, such as 3 1/2, before each unit.");
    }
    if (word === undefined)
      return refuse("ambiguous", `The last number has no unit: is it ${units.map(({ name }) => name).join(" or ")}?`);
    const unit =
      unitFor(word.text, units) ??
      refuse("unknown-unit", `"${described(word.text).slice(10, -1)}" is none of the units given.`);
    if (last !== null && unit.scale[0] * last.scale[1] >= last.scale[0] * unit.scale[1]) {
      return refuse("ambiguous", "Parts go from the larger unit to the smaller, each unit once.");
    }
    const scale = new Decimal(unit.scale[0]).div(unit.scale[1]);
    sum = sum.plus(value.times(scale));
    last = unit;
    at = next + 1;
  }
  if (last === null) return refuse("unreadable", "Write a number and its unit.");
  const inLast = kept(sum.times(last.scale[1]).div(last.scale[0]));
  return makeQuantity(last, negative ? inLast.negated() : inLast);
}

function commaRemedy(token: Token | undefined, options: ReadingOptions | undefined): string {
  const hasComma = token?.kind === "digits" && token.text.includes(",") && options === undefined;
  return hasComma
    ? 'A comma may mark decimals or thousands: name the locale, for example { locale: "de" }.'
    : "Write a whole number, a decimal or a fraction such as 3 1/2.";
}
