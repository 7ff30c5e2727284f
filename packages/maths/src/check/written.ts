import { Decimal } from "../engine/numbers.js";
import { described, marksOf } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { inPlace, QuantityError } from "../engine/refusal.js";
import type { Place } from "../engine/refusal.js";
import { isCalled, takenFor } from "./mixed-up.js";

/** A number as a pupil writes it: its digits count. */
export interface Written {
  readonly value: Decimal;
  /** Decimals written; none for a fraction. */
  readonly decimals: number;
  /** One of the last place, or of the fraction: the number stands for half of it on either side. */
  readonly step: Decimal;
  /** Whether a unit stood behind the number, and whether it was the one asked for. */
  readonly unit: "none" | "as asked" | "another";
}

const LONGEST = 64;
const VULGAR: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};
const PIECE = /^(?:(\d{1,30}) )?(\d{1,6})\/(\d{1,6})|^(\d{0,30})(?:\.(\d{0,30}))?/u;

function refuse(where: Place, given: unknown): never {
  throw new QuantityError({
    code: "unreadable",
    ...inPlace(where),
    expected: "a number as it was written",
    received: described(given),
    remedy: 'Write it in figures, as text, for the digits count: "7.10", "7,1", "252 1/4", "7 yd 1 ft".',
  });
}

/** One way of writing for all: a point for the decimal mark, no marks between thousands, fractions with a stroke. */
function plain(text: string, locale: string | undefined): string {
  const vulgar = text.trim().replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/gu, (one) => ` ${VULGAR[one] ?? ""}`);
  const spaced = vulgar
    .replace(/[\s\u00a0\u202f]+/gu, " ")
    .replace(/⁄/gu, "/")
    .trim();
  const grouped = (by: string): RegExp => new RegExp(`(?<![\\d.,])\\d{1,3}(?:[${by}]\\d{3})+(?![\\d${by}])`, "gu");
  const mark = locale === undefined ? null : marksOf(locale).decimal;
  const joined = (own: string, by: string): string => own.replace(grouped(by), (one) => one.replace(/[.,' ]/gu, ""));
  if (mark === ",") return joined(spaced, ".").replace(/(\d*),(\d)/gu, "$1.$2");
  const thousands = joined(spaced, ",");
  return mark === "." ? thousands : thousands.replace(/(\d*),(\d)/gu, "$1.$2");
}

/** The size of a unit written behind a number, in the unit asked; null for one that is not of its kind. */
function sizeOf(text: string, unit: Unit<string>): readonly [over: number, under: number, asAsked: boolean] | null {
  if (isCalled(text, unit)) return [1, 1, true];
  const other = takenFor(unit).find((one) => isCalled(text, one));
  return other === undefined ? null : [other.scale[0] * unit.scale[1], other.scale[1] * unit.scale[0], false];
}

interface Piece {
  readonly value: Decimal;
  readonly step: Decimal;
  readonly decimals: number;
  readonly length: number;
}

function pieceOf(text: string): Piece | null {
  const found = PIECE.exec(text);
  if (found === null || !/\d/u.test(found[0])) return null;
  const [all, whole = "0", over = "", under = "", digits = "", after = ""] = found;
  if (over === "") {
    const step = new Decimal(10).pow(-after.length);
    return {
      value: new Decimal(`${digits === "" ? "0" : digits}.${after === "" ? "0" : after}`),
      step,
      decimals: after.length,
      length: all.length,
    };
  }
  if (Number(under) === 0) return null;
  const step = new Decimal(1).div(under);
  return { value: new Decimal(over).div(under).plus(whole), step, decimals: 0, length: all.length };
}

/** Reads a number, with a fraction, a decimal comma, or units behind it; what is no number is refused. */
export function readWritten(where: Place, given: unknown, unit: Unit<string> | null, locale?: string): Written {
  if (typeof given !== "string" || given.length > LONGEST) return refuse(where, given);
  let rest = plain(given, locale);
  const minus = /^[-−]/u.test(rest);
  if (minus) rest = rest.slice(1).trim();
  let [value, step, decimals, pieces] = [new Decimal(0), new Decimal(1), 0, 0];
  let [others, named] = [0, 0];
  while (rest !== "") {
    const piece = pieceOf(rest);
    if (piece === null) return refuse(where, given);
    rest = rest.slice(piece.length).trim();
    const word = /^[^\d\s][^\d]*?(?=\s*\d|$)/u.exec(rest)?.[0].trim() ?? "";
    if (word === "" && (rest !== "" || pieces > 0)) return refuse(where, given);
    rest = rest.slice(word.length).trim();
    const size = word === "" ? ([1, 1, true] as const) : unit === null ? null : sizeOf(word, unit);
    if (size === null) return refuse(where, given);
    const [over, under, isAsked] = size;
    value = value.plus(piece.value.times(over).div(under));
    step = piece.step.times(over).div(under);
    decimals = piece.decimals;
    if (!isAsked) others += 1;
    named += Number(word !== "");
    pieces += 1;
    if (pieces > 3) return refuse(where, given);
  }
  if (pieces === 0) return refuse(where, given);
  return {
    value: minus ? value.neg() : value,
    decimals,
    step,
    unit: named === 0 ? "none" : others === 0 ? "as asked" : "another",
  };
}
