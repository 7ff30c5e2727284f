import { decimalFrom } from "../engine/numbers.js";
import type { Decimal } from "../engine/numbers.js";
import { described, isUnit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { inPlace, QuantityError } from "../engine/refusal.js";
import type { Place } from "../engine/refusal.js";

/** An answer as somebody wrote it: its digits count. */
export interface Claim<D extends string> {
  /** The number as written: "6.94", "252 1/4", "7,01", "7 yd 1 ft". A fraction claims half its step. */
  readonly written: string;
  /** The unit it was asked for in; null for a plain number. */
  readonly unit: Unit<D> | null;
  /** How far off a right answer may be, counted in that unit; where none is named the digits written decide. */
  readonly within?: number | string;
  /** The decimals asked for: an answer with fewer is not finished. */
  readonly decimals?: number;
  /** The language the number is written in, such as "de", where a comma before three figures is a decimal mark. */
  readonly locale?: string;
  /** Said where the question leaves open on which length a percentage was measured: then neither convention is a slip. */
  readonly base?: "not stated";
}

/** How far off a claim may be; null where none is named. */
export function readTolerance(where: Place, within: unknown): Decimal | null {
  if (within === undefined) return null;
  const tolerance = decimalFrom(within);
  if (tolerance?.gte(0) === true) return tolerance;
  const expected = "a number of zero or more";
  const remedy = "It is counted in the unit of the claim; leave it out to judge by the digits written.";
  throw new QuantityError({ code: "not-a-number", ...inPlace(where), expected, received: described(within), remedy });
}

/** The decimals asked for; null where none are. */
export function readDecimals(where: Place, decimals: unknown): number | null {
  if (decimals === undefined) return null;
  if (Number.isSafeInteger(decimals) && (decimals as number) >= 0 && (decimals as number) <= 12)
    return decimals as number;
  throw new QuantityError({
    code: "not-whole",
    ...inPlace(where),
    expected: "a whole number from 0 to 12",
    received: described(decimals),
    remedy: "",
  });
}

/** How the unit of a claim stands to the one the answer is in. */
export type UnitVerdict =
  "as asked" | "another of its kind" | "none wanted" | "of another kind" | "missing" | "not wanted";

/** Judges the unit of a claim; what is no unit at all is refused. */
export function unitVerdict(where: Place, own: Unit<string> | null, claimed: unknown): UnitVerdict {
  if (claimed === null) return own === null ? "none wanted" : "missing";
  if (!isUnit(claimed)) {
    const remedy = "Units are values you import, such as yards; write unit: null for a plain number.";
    throw new QuantityError({
      code: "unknown-unit",
      ...inPlace(where),
      expected: "a unit",
      received: described(claimed),
      remedy,
    });
  }
  if (own === null) return "not wanted";
  if (claimed.dimension !== own.dimension) return "of another kind";
  return own.name === claimed.name ? "as asked" : "another of its kind";
}
