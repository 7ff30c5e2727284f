import { QuantityError } from "@thrum/maths";
import { frozen } from "../job/frozen.js";
import { allAgree, checkedSums } from "./checked-sums.js";
import type { CheckedSum, Stated } from "./checked-sums.js";
import type { FigureName } from "./figures.js";
import type { Rounding, SumConvention, WayOfReckoning } from "./relations.js";
import { singleChanges } from "./single-changes.js";
import type { SingleChange } from "./single-changes.js";
import { statedFigure } from "./stated-figure.js";
import type { PrintedFigure, StatedFigure } from "./stated-figure.js";
import { sentencesOf } from "./told.js";

/** Whether the figures of a printed project agree, and if not what would make them. */
export interface Reconciliation {
  readonly verdict:
    | "too little stated"
    | "agrees"
    | "impossible figure"
    | "one convention"
    | "one way of rounding"
    | "one change"
    | "not explained";
  /** Every sum that could be checked, by the dividing rule and rounded to the nearest, in the units printed. */
  readonly sums: readonly CheckedSum[];
  /** Ways of reckoning and of rounding under which all sums agree. */
  readonly ways: readonly WayOfReckoning[];
  /** Figures which, changed alone, make all sums agree; the likeliest first. */
  readonly changes: readonly SingleChange[];
  /** Figures that cannot be as printed: all of a thing lost, a part of an end. They are the finding. */
  readonly impossible: readonly FigureName[];
  /** The finding in sentences. */
  readonly says: readonly string[];
}

const CONVENTIONS: readonly SumConvention[] = [
  "adding rule",
  "hem once",
  "pairs counted as ends",
  "edge ends left out",
  "waste with every piece",
  "weft taken equal to warp",
  "edge dents crammed",
  "places left empty",
];

const ROUNDINGS: readonly Rounding[] = ["roundDown", "roundUp", "in round numbers"];
const PLAIN: WayOfReckoning = { convention: null, rounding: "nearest" };
const ROUNDLY: WayOfReckoning = { convention: null, rounding: "in round numbers" };

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
  const impossible = [...stated.values()].filter((one) => one.impossible !== null);
  const found = impossible.length > 0 ? impossibleFigures(stated, impossible) : agreeing(stated);
  return frozen({ ...found, says: sentencesOf(found, stated) });
}

type Found = Omit<Reconciliation, "says">;

/** What an impossible figure would have to be, where the others tell. */
function impossibleFigures(stated: Stated, impossible: readonly StatedFigure[]): Found {
  const names = impossible.map(({ figure }) => figure);
  const changes = singleChanges(stated, PLAIN).filter(({ figure }) => names.includes(figure));
  const sums = checkedSums(stated, PLAIN);
  return { verdict: "impossible figure", sums, ways: [], changes, impossible: names };
}

/** The conventions that give just what is printed where the plain sum only leaves room. */
function filling(stated: Stated, sums: readonly CheckedSum[]): readonly WayOfReckoning[] {
  if (sums.every(({ finding }) => finding === "agrees")) return [];
  const room = sums.filter(({ finding }) => finding === "leaves room").length;
  return CONVENTIONS.map((convention): WayOfReckoning => ({ convention, rounding: "nearest" })).filter((way) => {
    const tried = checkedSums(stated, way);
    const left = tried.filter(({ finding }) => finding === "leaves room").length;
    return left < room && tried.length >= sums.length && allAgree(tried, sums);
  });
}

function agreeing(stated: Stated): Found {
  const impossible: readonly FigureName[] = [];
  const sums = checkedSums(stated, PLAIN);
  if (sums.every(({ finding }) => finding !== "differs")) {
    const exact = filling(stated, sums);
    if (exact.length > 0) return { verdict: "one convention", sums, ways: exact, changes: [], impossible };
    const isChecked = sums.some(({ finding }) => finding === "agrees");
    return { verdict: isChecked ? "agrees" : "too little stated", sums, ways: [], changes: [], impossible };
  }
  const waysBy = (conventions: readonly WayOfReckoning["convention"][], roundings: readonly Rounding[]) =>
    conventions
      .flatMap((convention) => roundings.map((rounding): WayOfReckoning => ({ convention, rounding })))
      .filter((way) => allAgree(checkedSums(stated, way), sums));
  const plain = [...waysBy(CONVENTIONS, ["nearest"]), ...waysBy([null], ROUNDINGS)];
  const alone = singleChanges(stated, PLAIN);
  // Beside a figure given in round numbers another may be the misprint.
  const changes = plain.length > 0 || alone.length > 0 ? alone : singleChanges(stated, ROUNDLY);
  const ways = plain.length > 0 || changes.length > 0 ? plain : waysBy(CONVENTIONS, ROUNDINGS);
  return { verdict: verdictOf(ways, changes), sums, ways, changes, impossible };
}
