import { Decimal, kept } from "../engine/numbers.js";
import type { Unit } from "../engine/quantity/index.js";
import { outOfFrame } from "../engine/formula/index.js";
import type { Run } from "../engine/formula/index.js";
import { readDecimals, readTolerance, unitVerdict } from "./claim.js";
import type { Claim, UnitVerdict } from "./claim.js";
import { readWritten } from "./written.js";
import type { Written } from "./written.js";

/** A claim laid beside the answer, both counted in one unit. */
export interface Judged {
  readonly claimed: Decimal;
  readonly decimals: number;
  /** One of the last place written. */
  readonly step: Decimal;
  readonly asked: number | null;
  readonly tolerance: Decimal | null;
  readonly base: Claim<string>["base"];
  /** The unit the two are compared in: that of the claim where it can be, else that of the answer. */
  readonly unit: Unit<string> | null;
  readonly unitVerdict: UnitVerdict;
  readonly unitWritten: Written["unit"];
  readonly exact: Decimal;
  /** A number of the formula's own counting, in that unit. */
  readonly toClaim: (value: Decimal) => Decimal;
  /** To the digits written, halves up. */
  readonly rounded: (value: Decimal) => Decimal;
}

/** The unit a claim is judged in, and how a number of the formula's counting is turned into it. */
export function inUnitOf(
  caller: string,
  worked: Run,
  claimUnit: Unit<string> | null,
): Pick<Judged, "unit" | "unitVerdict" | "toClaim" | "exact"> {
  const { frame, unit: own, countedIn } = worked;
  const verdict = unitVerdict([caller, "unit"], own, claimUnit);
  const unit = verdict === "as asked" || verdict === "another of its kind" ? claimUnit : own;
  const toClaim = (value: Decimal): Decimal => {
    return own === null || unit === null ? value : outOfFrame(frame, value, unit, countedIn);
  };
  return { unit, unitVerdict: verdict, toClaim, exact: kept(toClaim(worked.steps.at(-1)?.value as Decimal)) };
}

/** Reads a claim against a formula that has been worked through. */
export function judgedBy(caller: string, worked: Run, claim: Claim<string>): Judged {
  const { written, unit: claimUnit, within, base, decimals: wanted, locale } = Object(claim) as Claim<string>;
  const tolerance = readTolerance([caller, "within"], within);
  const asked = readDecimals([caller, "decimals"], wanted);
  const own = inUnitOf(caller, worked, claimUnit);
  const { value, decimals, step, unit: unitWritten } = readWritten([caller, "written"], written, own.unit, locale);
  const rounded = (one: Decimal): Decimal => one.div(step).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).times(step);
  const claimed = kept(value);
  return { ...own, claimed, decimals, step, asked, tolerance, base, unitWritten, rounded };
}
