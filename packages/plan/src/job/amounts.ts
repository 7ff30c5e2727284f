import { grams, lengthFrom, lengthReading, massFrom, massReading, metres, sign } from "@thrum/maths";
import type { Length, Mass, Quantity, Unit } from "@thrum/maths";
import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form, Notation } from "./form.js";
import { LENGTHS, MASSES } from "./units.js";

/** The exact decimal text of a number as a weaver writes it: `12`, `1.5`, `1 1/2`, `½`; null for anything else. */
export function decimalOf(written: string): string | null {
  const read = /^[\d ./½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⁄-]+$/u.test(written) ? lengthReading(`${written} m`, [metres]) : null;
  return read?.ok === true && sign(read.value) >= 0 ? read.value.value : null;
}

/** Thirds, and halves to 32nds, as a fraction; null for any other number. */
function asFraction(value: string, under: number): string | null {
  const over = Math.round(Number(value) * under);
  if (!Number.isSafeInteger(over) || over % under === 0) return null;
  let [a, b] = [over, under];
  while (b > 0) [a, b] = [b, a % b];
  const [rest, parts, wholes] = [(over % under) / a, under / a, Math.floor(over / under)];
  const written = `${wholes > 0 ? `${String(wholes)} ` : ""}${String(rest)}/${String(parts)}`;
  return decimalOf(written) === value ? written : null;
}

/** A number as one writes it: thirds as a fraction everywhere, smaller parts where the trade halves. */
export function numberText(value: string, halves = false): string {
  return asFraction(value, 3) ?? (halves ? asFraction(value, 32) : null) ?? value;
}

const HALVED: readonly string[] = ["inches", "yards", "ounces", "pounds"];

function amountText<D extends string>(amount: Quantity<D>, units: readonly Unit<D>[]): string {
  const symbol = units.find(({ name }) => name === amount.unit)?.symbol ?? "?";
  return `${numberText(amount.value, HALVED.includes(amount.unit))} ${symbol}`;
}

/** What is wrong with an amount and its unit, before a reader says it in words of its own. */
function slipOf(written: string, one: string, other: string): void {
  if (/^[\d ./½¼¾]+$/u.test(written))
    throw new Unreadable(`Which unit? Write ${written} ${one}, or ${written} ${other}.`, "ambiguous");
  if (/\d,\d/u.test(written)) throw new Unreadable(`Write ${written.replace(/(\d),(\d)/gu, "$1.$2")}.`);
  if (/^[-−]/u.test(written)) throw new Unreadable("Write it without the minus sign.", "out-of-range");
}

function within<D extends string>(
  amount: Quantity<D>,
  base: Unit<D>,
  least: number,
  most: number,
  mayBeNone: boolean,
  noun: string,
): void {
  const size = amount.in(base);
  if (size === 0 && mayBeNone) return;
  if (size >= least && size <= most) return;
  const limit = `from ${String(least)} ${base.symbol} to ${String(most)} ${base.symbol}`;
  throw new Unreadable(
    `Write one ${limit}${mayBeNone ? ", or nothing at all as 0 " + base.symbol : ""}.`,
    "out-of-range",
    noun,
  );
}

const withoutDots = (written: string): string => written.replace(/(\p{L})\.(?= |$)/gu, "$1");

function lengths(mayBeNone: boolean): Notation<Length> {
  return {
    read: (written) => {
      slipOf(written, "in", "cm");
      const length = lengthFrom(withoutDots(written), LENGTHS);
      within(length, metres, 1e-6, 1e5, mayBeNone, "a length");
      return length;
    },
    write: (length) => amountText(length, LENGTHS),
  };
}

export const lengthNotation: Notation<Length> = lengths(false);
export const massNotation: Notation<Mass> = {
  read: (written) => {
    slipOf(written, "oz", "g");
    const mass = massFrom(withoutDots(written), MASSES);
    within(mass, grams, 1e-3, 1e7, false, "a mass");
    return mass;
  },
  write: (mass) => amountText(mass, MASSES),
};

/** Whether a text reads as a length. */
export function isLength(written: string): boolean {
  return lengthReading(withoutDots(written), LENGTHS).ok;
}

/** Whether a text reads as a mass. */
export function isMass(written: string): boolean {
  return massReading(withoutDots(written), MASSES).ok;
}

export const length: Form<Length> = text("a length", "16 in", lengthNotation);
/** A length that may be none: of a hem, of waste. */
export const lengthOrNone: Form<Length> = text("a length", "16 in", lengths(true));
