import { decimalFrom } from "../numbers.js";
import type { Decimal } from "../numbers.js";
import { described, requireSameDimension } from "../quantity/index.js";
import type { Unit } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";

/** An answer as somebody wrote it: its digits count. */
export interface Claim<D extends string> {
  /** The number as written, such as "6.94". */
  readonly written: string;
  /** The unit it was written in; null for a plain number. */
  readonly unit: Unit<D> | null;
  /** How far off a right answer may be, counted in that unit; where none is named the digits written decide. */
  readonly within?: number | string;
}

const WRITTEN = /^-?\d{1,30}(?:\.\d{1,30})?$/u;

/** How far off a claim may be; null where none is named. */
function readTolerance(where: string, within: unknown): Decimal | null {
  if (within === undefined) return null;
  const tolerance = decimalFrom(within);
  if (tolerance?.gte(0) === true) return tolerance;
  const expected = "a number of zero or more";
  const remedy = "It is counted in the unit of the claim; leave it out to judge by the digits written.";
  throw new QuantityError({ code: "not-a-number", where, expected, received: described(within), remedy });
}

/** The number claimed, how many decimals it was written to, and how far off it may be. */
export function readClaim(
  call: string,
  written: unknown,
  within: unknown,
): readonly [value: Decimal, decimals: number, tolerance: Decimal | null] {
  const tolerance = readTolerance(`${call.slice(0, -1)}, { within })`, within);
  const where = `${call.slice(0, -1)}, { written })`;
  const value = typeof written === "string" && WRITTEN.test(written) ? decimalFrom(written) : null;
  if (value !== null) return [value, (written as string).split(".")[1]?.length ?? 0, tolerance];
  const remedy = 'The digits count, so the number is given as text: "7.10" says more than "7.1".';
  const expected = "a number as it was written";
  throw new QuantityError({ code: "unreadable", where, expected, received: described(written), remedy });
}

/** Refuses a claim in a unit of another kind, and a unit where the answer has none. */
export function requireClaimUnit(where: string, own: Unit<string> | null, claimed: unknown): void {
  if (own !== null) {
    requireSameDimension(own, claimed, where);
  } else if (claimed !== null) {
    const remedy = "This answer is a plain number: write unit: null.";
    throw new QuantityError({ code: "wrong-kind", where, expected: "no unit", received: described(claimed), remedy });
  }
}
