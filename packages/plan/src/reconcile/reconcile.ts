import { QuantityError } from "@thrum/maths";
import { frozen } from "../job/frozen.js";
import { allAgree, checkedSums } from "./checked-sums.js";
import type { CheckedSum } from "./checked-sums.js";
import type { Rounding, SumConvention, WayOfReckoning } from "./relations.js";
import { singleChanges } from "./single-changes.js";
import type { SingleChange } from "./single-changes.js";
import { statedFigure } from "./stated-figure.js";
import type { PrintedFigure } from "./stated-figure.js";

/** Whether the figures of a printed project agree, and if not what would make them. */
export interface Reconciliation {
  readonly verdict:
    "too little stated" | "agrees" | "one convention" | "one way of rounding" | "one change" | "not explained";
  /** Every sum that could be checked, by the dividing rule and rounded to the nearest, in the units printed. */
  readonly sums: readonly CheckedSum[];
  /** Ways of reckoning and of rounding under which all sums agree. */
  readonly ways: readonly WayOfReckoning[];
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

const ROUNDINGS: readonly Rounding[] = ["down", "up"];

function refuseTwice(figures: readonly PrintedFigure[]): void {
  if (new Set(figures.map(({ figure }) => figure)).size === figures.length) return;
  const [expected, received] = ["every figure once", "a figure given twice"];
  const remedy = "Leave one of the two out, and try the other after it.";
  throw new QuantityError({ code: "ambiguous", function: "reconcile", path: [], expected, received, remedy });
}

function verdictOf(ways: readonly WayOfReckoning[], changes: readonly SingleChange[]): Reconciliation["verdict"] {
  if (ways.some(({ convention }) => convention !== null)) return "one convention";
  if (ways.length > 0) return "one way of rounding";
  return changes.length > 0 ? "one change" : "not explained";
}

/**
 * Finds the misprint: which one convention, or which one figure printed otherwise, makes all figures of a project agree.
 * Only where that is not enough is a page's way of rounding allowed beside a convention.
 * More than one answer means that the page alone cannot tell; all are given. What a page does not state is not taken
 * for nothing: a sum that may contain it only says what there is at least.
 *
 * @param figures every figure the project prints, each once
 * @throws QuantityError for text that is no figure, a unit of another kind, a figure given twice
 */
export function reconcile(figures: readonly PrintedFigure[]): Reconciliation {
  refuseTwice(figures);
  const stated = new Map(figures.map((one) => [one.figure, statedFigure(one)]));
  const sums = checkedSums(stated, { convention: null, rounding: "nearest" });
  if (sums.every(({ finding }) => finding !== "differs")) {
    const isChecked = sums.some(({ finding }) => finding === "agrees");
    return frozen({ verdict: isChecked ? "agrees" : "too little stated", sums, ways: [], changes: [] });
  }
  const waysBy = (conventions: readonly WayOfReckoning["convention"][], roundings: readonly Rounding[]) =>
    conventions
      .flatMap((convention) => roundings.map((rounding): WayOfReckoning => ({ convention, rounding })))
      .filter((way) => allAgree(checkedSums(stated, way), sums));
  const plain = [...waysBy(CONVENTIONS, ["nearest"]), ...waysBy([null], ROUNDINGS)];
  const changes = singleChanges(stated);
  const ways = plain.length > 0 || changes.length > 0 ? plain : waysBy(CONVENTIONS, ROUNDINGS);
  return frozen({ verdict: verdictOf(ways, changes), sums, ways, changes });
}
