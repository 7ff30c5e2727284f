import { QuantityError } from "@thrum/maths";
import { frozen } from "../job/frozen.js";
import { checkedSums } from "./misfits.js";
import type { CheckedSum, Rounding } from "./misfits.js";
import type { SumConvention } from "./relations.js";
import { singleChanges } from "./single-changes.js";
import type { SingleChange } from "./single-changes.js";
import { statedFigure } from "./stated-figure.js";
import type { PrintedFigure } from "./stated-figure.js";

/** A way of reckoning, or none beside the trade's dividing rule, with the way the page rounds. */
export interface Convention {
  readonly convention: SumConvention | "none";
  readonly rounding: Rounding;
}

/** Whether the figures of a printed project agree, and if not what would make them. */
export interface Reconciliation {
  readonly verdict: "nothing to check" | "agrees" | "one convention" | "one change" | "not explained";
  /** Every sum that could be checked, by the dividing rule and rounded to the nearest; in inches, pounds and counts. */
  readonly sums: readonly CheckedSum[];
  /** Ways of reckoning and of rounding under which all sums agree. */
  readonly conventions: readonly Convention[];
  /** Figures which, changed alone, make all sums agree; the likeliest first. */
  readonly changes: readonly SingleChange[];
}

const CONVENTIONS: readonly SumConvention[] = [
  "adding rule",
  "hem once",
  "pairs counted as ends",
  "edge ends left out",
  "waste with every piece",
  "weft taken equal to warp",
];

const ROUNDINGS: readonly Rounding[] = ["down", "up", "to round figures"];

/**
 * Finds the misprint: which one convention, or which one figure printed otherwise, makes all figures of a project agree.
 * Only where that is not enough is a page's way of rounding allowed beside a convention.
 * More than one answer means that the page alone cannot tell; all are given.
 *
 * @param figures every figure the project prints, each once
 * @throws QuantityError for text that is no figure, a unit of another kind, a figure given twice
 */
export function reconcile(figures: readonly PrintedFigure[]): Reconciliation {
  const stated = new Map(figures.map((one) => [one.figure, statedFigure(one)]));
  if (stated.size !== figures.length) {
    const [expected, received] = ["every figure once", "a figure given twice"];
    const remedy = "Leave one of the two out, and try the other after it.";
    throw new QuantityError({ code: "ambiguous", where: "reconcile", expected, received, remedy });
  }
  const sums = checkedSums(stated, null, "nearest");
  if (sums.every(({ agrees }) => agrees)) {
    const verdict = sums.length === 0 ? "nothing to check" : "agrees";
    return frozen({ verdict, sums, conventions: [], changes: [] });
  }
  const agree = (convention: SumConvention | null, rounding: Rounding): boolean => {
    const found = checkedSums(stated, convention, rounding);
    return found.length >= sums.length && found.every(({ agrees }) => agrees);
  };
  const under = (rounding: Rounding): readonly Convention[] =>
    CONVENTIONS.filter((one) => agree(one, rounding)).map((convention) => ({ convention, rounding }));
  const roundings = ROUNDINGS.filter((one) => agree(null, one));
  const alone = roundings.map((rounding): Convention => ({ convention: "none", rounding }));
  const [plain, changes] = [[...under("nearest"), ...alone], singleChanges(stated)];
  const conventions = plain.length > 0 || changes.length > 0 ? plain : ROUNDINGS.flatMap(under);
  const otherwise = changes.length > 0 ? "one change" : "not explained";
  return frozen({ verdict: conventions.length > 0 ? "one convention" : otherwise, sums, conventions, changes });
}
