import { Decimal, kept } from "../numbers.js";
import type { Unit } from "../quantity/index.js";
import { countsInUnit, outOfFrame } from "../formula/index.js";
import type { Run } from "../formula/index.js";
import { readClaim, unitVerdict } from "./claim.js";
import type { Claim, UnitVerdict } from "./claim.js";

/** A claim laid beside the answer, both counted in one unit. */
export interface Judged {
  readonly claimed: Decimal;
  readonly decimals: number;
  readonly tolerance: Decimal | null;
  readonly base: Claim<string>["base"];
  /** The unit the two are compared in: that of the claim where it can be, else that of the answer. */
  readonly unit: Unit<string> | null;
  readonly unitVerdict: UnitVerdict;
  readonly exact: Decimal;
  /** A number of the formula's own counting, in that unit. */
  readonly toClaim: (value: Decimal) => Decimal;
  /** To the digits written, halves up. */
  readonly rounded: (value: Decimal) => Decimal;
}

/** Reads a claim against a formula that has been worked through. */
export function judgedBy(worked: Run, claim: Claim<string>): Judged {
  const { declared, frame, unit: own } = worked;
  const { written, unit: claimUnit, within, base } = Object(claim) as Claim<string>;
  const [claimed, decimals, tolerance] = readClaim(["check"], written, within);
  const verdict = unitVerdict(["check", "unit"], own, claimUnit);
  const unit = verdict === "as asked" || verdict === "another of its kind" ? claimUnit : own;
  const toClaim = (value: Decimal): Decimal => {
    if (own === null || unit === null) return value;
    if (!countsInUnit(declared)) return outOfFrame(frame, value, unit);
    const over = new Decimal(own.scale[0]).times(unit.scale[1]);
    return value.times(over).div(new Decimal(own.scale[1]).times(unit.scale[0]));
  };
  const exact = kept(toClaim(worked.steps.at(-1)?.value as Decimal));
  const rounded = (value: Decimal): Decimal => value.toDecimalPlaces(decimals, Decimal.ROUND_HALF_UP);
  return { claimed, decimals, tolerance, base, unit, unitVerdict: verdict, exact, toClaim, rounded };
}
