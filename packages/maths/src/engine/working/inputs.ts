import { Decimal } from "../numbers.js";
import { isPercent, powersOf } from "../quantity/index.js";
import type { Unit } from "../quantity/index.js";
import { factorInto, intoFrame } from "../formula/index.js";
import type { Powers, Read, Run, Value } from "../formula/index.js";
import { amount, factorText, inWords, symbolFor, symbolOf } from "./words.js";

/** An input in full where it is short; a computed one is told to be rounded. */
function asGiven(value: Decimal, symbol: string): string {
  const short = amount(value, symbol, value.precision() <= 12 ? 12 : 6);
  return short.exact ? short.text : `≈ ${short.text}`;
}

/** An input as it is told before the sum begins. */
export function inputText(read: Read): string {
  if (read.what === "list") return read.members.map(inputText).join(", ") || "none";
  if (read.what === "number") return amount(read.value, "").text;
  if (read.what === "quantity") return asGiven(read.value, read.unit.symbol);
  if (read.what === "word") return read.word;
  const { length, mass } = read.unit.of ?? { length: null, mass: null };
  const parts = [length, mass].map((part) => (part ? `${String(part[0])} ${part[1].symbol}` : "")).filter(Boolean);
  return `${read.unit.symbol}: ${parts.join(" to ")}`;
}

/** What the inputs are in the lines of numbers: percentages as they were given, all else in the unit of work. */
export function inputAmounts(
  { inputs, values, frame }: Run,
  powers: ReadonlyMap<string, Powers>,
): Record<string, readonly string[]> {
  const amountsOf = (name: string, value: Value): readonly string[] => {
    const read = inputs.get(name);
    const given = read?.what === "list" ? read.members : [read];
    const percents = given.flatMap((one) => (one?.what === "quantity" && isPercent(one.unit) ? [inputText(one)] : []));
    if (percents.length > 0) return percents;
    const [one] = given;
    const symbol =
      one?.what === "quantity"
        ? (one.reckonedIn?.symbol ?? symbolFor(frame, one.unit))
        : symbolOf(frame, powers.get(name) ?? [0, 0]);
    return [value].flat().map((x) => amount(x, symbol).text);
  };
  return Object.fromEntries([...values].map(([name, value]) => [name, amountsOf(name, value)]));
}

/** How an input is turned into the unit of work; nothing where it already is in it. */
export function conversionsOf({ inputs, frame }: Run): readonly { readonly name: string; readonly text: string }[] {
  const lines: { name: string; text: string }[] = [];
  const convert = (name: string, value: Decimal, unit: Unit<string>, reckonedIn: Unit<string> | null): void => {
    const factor = factorInto(frame, unit, reckonedIn);
    if (factor[0].eq(factor[1]) || powersOf(unit.dimension).every((power) => power === 0)) return;
    const into = amount(intoFrame(frame, value, unit, reckonedIn), reckonedIn?.symbol ?? symbolFor(frame, unit));
    const from = asGiven(value, unit.symbol);
    lines.push({ name: inWords(name), text: `${from} ${factorText(factor)} ${into.exact ? "=" : "≈"} ${into.text}` });
  };
  for (const [name, read] of inputs) {
    for (const one of read.what === "list" ? read.members : [read]) {
      if (one.what === "quantity") convert(name, one.value, one.unit, one.reckonedIn);
      if (one.what !== "unit") continue;
      const { length, mass } = one.unit.of ?? { length: null, mass: null };
      if (length) convert(`${name}.length`, new Decimal(length[0]), length[1], null);
      if (mass) convert(`${name}.mass`, new Decimal(mass[0]), mass[1], null);
    }
  }
  return lines;
}
