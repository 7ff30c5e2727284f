import { decimalFrom } from "../numbers.js";
import type { Decimal } from "../numbers.js";
import { described, isUnit } from "../quantity/index.js";
import type { Unit } from "../quantity/index.js";
import { inPlace, QuantityError } from "../refusal.js";
import type { Place } from "../refusal.js";

/** An answer as somebody wrote it: its digits count. */
export interface Claim<D extends string> {
  /** The number as written, such as "6.94". */
  readonly written: string;
  /** The unit it was written in; null for a plain number. */
  readonly unit: Unit<D> | null;
  /** How far off a right answer may be, counted in that unit; where none is named the digits written decide. */
  readonly within?: number | string;
  /** Said where the question leaves open on which length a percentage was measured: then neither convention is a slip. */
  readonly base?: "not stated";
}

const WRITTEN = /^-?\d{1,30}(?:\.\d{1,30})?$/u;

/** How far off a claim may be; null where none is named. */
function readTolerance(where: Place, within: unknown): Decimal | null {
  if (within === undefined) return null;
  const tolerance = decimalFrom(within);
  if (tolerance?.gte(0) === true) return tolerance;
  const expected = "a number of zero or more";
  const remedy = "It is counted in the unit of the claim; leave it out to judge by the digits written.";
  throw new QuantityError({ code: "not-a-number", ...inPlace(where), expected, received: described(within), remedy });
}

/** The number claimed, how many decimals it was written to, and how far off it may be. */
export function readClaim(
  call: Place,
  written: unknown,
  within: unknown,
): readonly [value: Decimal, decimals: number, tolerance: Decimal | null] {
  const tolerance = readTolerance([...call, "within"], within);
  const where: Place = [...call, "written"];
  const value = typeof written === "string" && WRITTEN.test(written) ? decimalFrom(written) : null;
  if (value !== null) return [value, (written as string).split(".")[1]?.length ?? 0, tolerance];
  const remedy = 'The digits count, so the number is given as text: "7.10" says more than "7.1".';
  const expected = "a number as it was written";
  throw new QuantityError({ code: "unreadable", ...inPlace(where), expected, received: described(written), remedy });
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
