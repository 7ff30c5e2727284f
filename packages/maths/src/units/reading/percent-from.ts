import { decimalText, kept } from "../../engine/numbers.js";
import { isUnit } from "../../engine/quantity/index.js";
import type { Quantity, Unit } from "../../engine/quantity/index.js";
import type { ReadingOptions } from "./amount.js";
import { leadingNumber } from "./leading-number.js";
import { refusalsOf, textGiven } from "./text-given.js";

/** The words that say what a percentage is of. */
const BASES: Readonly<Record<string, RegExp>> = {
  percentLost: /^lost$/iu,
  percentAdded: /^(?:added|more)$/iu,
  percentOf: /^of (?:a|the) whole$/iu,
};

/**
 * A percentage from text, with what it is of: `8 % lost`, `6.5% added`, `80 % of a whole`.
 *
 * @param text a number, a percent sign, and the base in words
 * @param units the percentages that may stand there; where it is only one the base may be left out
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "ambiguous" where the base is left out, with the readings in `params.candidates`
 * @example percentFrom("8 1/2 % lost", [percentLost]).toString() // "8.5 % lost"
 */
export function percentFrom<D extends "loss" | "addition" | "share">(
  text: string,
  units: readonly Unit<D>[],
  options?: ReadingOptions,
): Quantity<D> {
  const given: unknown = units;
  const listed: readonly Unit<D>[] = Array.isArray(given) ? units : [];
  const known = listed.filter((one) => isUnit(one) && Object.hasOwn(BASES, one.name));
  const example = `8 % ${known[0]?.base ?? "lost"}`;
  const refuse = refusalsOf("percentFrom", "a percentage with what it is of", example, text);
  if (known.length === 0) return refuse("unknown-unit", "Give the percentages that may stand there: [percentLost].");
  const led = leadingNumber(textGiven(text, refuse), options, refuse);
  const [, base] = /^(?:%|percent|per cent) ?(.*)$/iu.exec(led?.rest ?? "") ?? [];
  if (led === null || base === undefined) return refuse("unreadable", `Write ${example}.`);
  const many = decimalText(kept(led.value));
  const [only] = known;
  const made = base === "" && known.length === 1 ? only : known.find(({ name }) => BASES[name]?.test(base));
  if (made !== undefined) return made(many);
  const candidates = known.map(({ base: own }) => `${many} % ${own ?? ""}`);
  const code = base === "" ? "ambiguous" : "wrong-kind";
  return refuse(code, `Of what? Write ${candidates.join(" or ")}.`, candidates);
}
