import { Decimal, kept } from "../../engine/numbers.js";
import { areUnitsOf, described, makeQuantity } from "../../engine/quantity/index.js";
import type { Quantity, Unit } from "../../engine/quantity/index.js";
import { QuantityError } from "../../engine/refusal.js";
import type { RefusalCode } from "../../engine/refusal.js";
import { marksFor } from "./marks-for.js";
import { leadingNumber } from "./leading-number.js";
import { amountAt, joins } from "./numerals.js";
import type { Token } from "./tokens.js";
import { tokensOf } from "./tokens.js";
import { unitCalled } from "./unit-words.js";

/** How the numerals are written; without a locale a comma is refused. */
export interface ReadingOptions {
  readonly locale: string;
}

const LONGEST = 200;

type Refuse = (code: RefusalCode, remedy: string) => never;

interface Part<D extends string> {
  readonly value: Decimal;
  readonly unit: Unit<D>;
}

/** The amount and unit that stand at this place, and where the next part begins. */
function partAt<D extends string>(
  tokens: readonly Token[],
  at: number,
  units: readonly Unit<D>[],
  options: ReadingOptions | undefined,
  refuse: Refuse,
): readonly [Part<D>, next: number] {
  const [value, next] =
    amountAt(tokens, at, marksFor(options)) ?? refuse("unreadable", commaRemedy(tokens[at], options));
  const word = tokens[next];
  if (word === undefined) {
    return refuse("ambiguous", `The last number has no unit: is it ${units.map(({ name }) => name).join(" or ")}?`);
  }
  if (word.kind === "slash") return refuse("unreadable", "A fraction is a whole number over another that is not zero.");
  if (word.kind === "hyphen") {
    return refuse("ambiguous", "Does the sign join, as in 3-1/2, or take away? Write the one amount that is meant.");
  }
  if (word.kind !== "word") {
    return refuse("ambiguous", "Two numbers stand side by side: write one number, such as 3 1/2, before each unit.");
  }
  const unit =
    unitCalled(word.text, units) ??
    refuse("unknown-unit", `Write one of the units given: ${described(word.text)} is none of them.`);
  return [{ value, unit }, next + 1];
}

/** Every part of the text, from large to small, each unit once. */
function partsOf<D extends string>(
  tokens: readonly Token[],
  units: readonly Unit<D>[],
  options: ReadingOptions | undefined,
  refuse: Refuse,
): readonly Part<D>[] {
  const parts: Part<D>[] = [];
  for (let at = 0; at < tokens.length;) {
    const joint = tokens[at];
    if (joint?.kind === "hyphen" && (parts.length === 0 || !joins(joint, tokens[at + 1]))) {
      return refuse("ambiguous", "A sign stands only before the whole amount.");
    }
    const [part, next] = partAt(tokens, joint?.kind === "hyphen" ? at + 1 : at, units, options, refuse);
    const last = parts.at(-1)?.unit.scale;
    const { scale } = part.unit;
    if (last !== undefined && scale[0] * last[1] >= last[0] * scale[1]) {
      return refuse("ambiguous", "Parts go from the larger unit to the smaller, each unit once.");
    }
    parts.push(part);
    at = next;
  }
  return parts;
}

/** An amount and the whole symbol or name of a unit, whatever marks stand in it: what a unit prints is read back. */
function symbolAlone<D extends string>(
  text: string,
  units: readonly Unit<D>[],
  options: ReadingOptions | undefined,
  refuse: Refuse,
): Quantity<D> | null {
  const [, sign = "", behind = ""] = /^\s*([-−]?)(.*)$/su.exec(text) ?? [];
  const word = behind.replace(/^[^\p{L}%]*/u, "").trim();
  const unit = /[^\p{L}.'"]/u.test(word) ? unitCalled(word, units) : undefined;
  const led = unit === undefined ? null : leadingNumber(behind.trim(), options, refuse);
  if (unit === undefined || led?.rest !== word) return null;
  return makeQuantity(unit, kept(sign === "" ? led.value : led.value.negated()));
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
  const known = areUnitsOf(dimension, units) ? units.map(({ name }) => name).join(", ") : "";
  const refuse: Refuse = (code, remedy) => {
    const expected = known === "" ? `an amount and a list of units of ${dimension}` : `an amount in ${known}`;
    throw new QuantityError({ code, function: reader, path: ["text"], expected, received: described(text), remedy });
  };
  if (known === "")
    return refuse("unknown-unit", "Give the units the text may use, for example [yards, feet, inches].");
  if (text.trim() === "") return refuse("empty", "Write a number and its unit, such as 3 1/2 in.");
  if (text.length > LONGEST) return refuse("too-long", `Text of more than ${String(LONGEST)} characters is not read.`);
  const alone = symbolAlone(text, units, options, refuse);
  if (alone !== null) return alone;
  // Where a locale is named a plain space between three digits and three groups them, as its own mark does.
  const grouped = options === undefined ? text : text.replace(/(?<=\d) (?=\d{3}(?!\d))/gu, "\u202f");
  const tokens = tokensOf(grouped) ?? [];
  const negative = tokens[0]?.kind === "hyphen";
  const parts = partsOf(negative ? tokens.slice(1) : tokens, units, options, refuse);
  const last = parts.at(-1)?.unit ?? refuse("unreadable", "Write a number and its unit, such as 3 1/2 in.");
  const inBase = parts.reduce(
    (sum, { value, unit }) => sum.plus(value.times(unit.scale[0]).div(unit.scale[1])),
    new Decimal(0),
  );
  const total = kept(inBase.times(last.scale[1]).div(last.scale[0]));
  return makeQuantity(last, negative ? total.negated() : total);
}

function commaRemedy(token: Token | undefined, options: ReadingOptions | undefined): string {
  const hasComma = token?.kind === "digits" && token.text.includes(",") && options === undefined;
  if (token?.kind === "digits" && options !== undefined)
    return `Write the marks as the locale ${described(options.locale).slice(9)} has them.`;
  return hasComma
    ? 'A comma may mark decimals or thousands: name the locale, for example { locale: "de" }.'
    : "Write a whole number, a decimal or a fraction such as 3 1/2.";
}
