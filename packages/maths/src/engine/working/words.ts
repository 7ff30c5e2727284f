import { decimalText, shown } from "../numbers.js";
import type { Decimal } from "../numbers.js";
import { powersOf } from "../quantity/index.js";
import type { Unit } from "../quantity/index.js";
import type { Frame, Powers } from "../formula/index.js";

/** `finishedLength` as a reader says it: "finished length"; `grainsPer20Yards`: "grains per 20 yards". */
export function inWords(name: string): string {
  const spaced = name.replace(/(?<=[a-z])[A-Z\d]|(?<=\d)[A-Z]/gu, (first) => ` ${first.toLowerCase()}`);
  return spaced.replace(/\./gu, " ").replace(/ up\b(?! to)/u, "-up");
}

/** One of the things: a package, an inch. */
export function singular(noun: string): string {
  return noun.replace(/ies$/u, "ys").replace(/(?<=ch)es$|s$/u, "");
}

/** The noun for so many: one of the "packages" is a package. */
export function counted(value: Decimal, noun: string): string {
  return value.eq(1) && /^[a-z]+s$/u.test(noun) ? singular(noun) : noun;
}

/** The name of the unit of work for so many powers of length and mass. */
export function symbolOf(frame: Frame, [length, mass]: Powers): string {
  const { only } = frame;
  if (only !== null) {
    const [l, m] = powersOf(only.dimension);
    if (l === length && m === mass) return only.symbol;
    return l === -length && m === -mass && (l !== 0 || m !== 0) ? `per ${only.symbol}` : "";
  }
  const [l, m] = [frame.length?.symbol ?? "", frame.mass?.symbol ?? ""];
  const names: Readonly<Record<string, string>> = {
    "1,0": l,
    "0,1": m,
    "1,-1": `${l}/${m}`,
    "-1,1": `${m}/${l}`,
    "-1,0": `per ${l}`,
    "0,-1": `per ${m}`,
    "2,0": `sq ${l}`,
    "-2,1": `${m}/sq ${l}`,
    "-3,1": `${m}/cu ${l}`,
    "3,-1": `cu ${l}/${m}`,
  };
  return names[`${String(length)},${String(mass)}`] ?? "";
}

/** The name of a dimension's unit of work, its things named: "ends/in". */
export function symbolFor(frame: Frame, unit: Unit<string>): string {
  const [over = "", under] = unit.dimension.split(" per ");
  if (powersOf(unit.dimension).every((power) => power === 0)) return unit.symbol;
  const counted = under === "length" && over !== "mass" && frame.only === null;
  return counted ? `${over}/${frame.length?.symbol ?? ""}` : symbolOf(frame, powersOf(unit.dimension));
}

/** A number with its unit, negatives in brackets; `exact` tells whether digits were left out. */
export function amount(
  value: Decimal,
  symbol: string,
  digits?: number,
): { readonly text: string; readonly exact: boolean } {
  const { text, exact } = shown(value, digits);
  const signed = value.isNegative() && text !== "0" ? `(−${text.slice(1)})` : text;
  return { text: symbol === "" ? signed : `${signed} ${symbol}`, exact };
}

/** As many digits as one writes in a hand calculation. */
const SHORT = 6;

/** "× 36", "÷ 7000" or "× 0.9144": a fraction as one step of hand arithmetic. */
export function factorText([over, under]: readonly [Decimal, Decimal]): string {
  const times = over.div(under);
  const inverse = under.div(over);
  const byInverse = times.precision() > SHORT && inverse.precision() <= SHORT;
  return byInverse ? `÷ ${decimalText(inverse)}` : `× ${shown(times, 12).text}`;
}
