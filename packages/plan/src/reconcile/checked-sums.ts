import { difference, inUnit } from "@thrum/maths";
import { givenRoundly } from "./figures.js";
import type { FigureName } from "./figures.js";
import { relations, widthOfEnds } from "./relations.js";
import type { Relation, Rounding, WayOfReckoning } from "./relations.js";
import type { Amount, StatedFigure } from "./stated-figure.js";

/** A sum that a stated figure answers: what is printed and what the other figures give, in the unit printed. */
export interface CheckedSum {
  readonly figure: FigureName;
  readonly stated: Amount;
  readonly reckoned: Amount;
  /** Terms that the page may count in without stating them: the sum is then the least there can be. */
  readonly unsaid: readonly FigureName[];
  /** It leaves room where it comes to less, and what the page does not state may make up the rest. */
  readonly finding: "agrees" | "differs" | "leaves room";
}

export type Stated = ReadonlyMap<FigureName, StatedFigure>;

/** Room for the last digits of a double, in which a difference is read out: a printed figure carries far fewer. */
const ROOM = 1e-9;

/** How much more is reckoned than stated, in the unit printed. */
function excess(reckoned: Amount, { amount, unit }: StatedFigure): number {
  if (typeof reckoned === "number" || typeof amount === "number" || typeof unit === "string") {
    return Number(reckoned) - Number(amount);
  }
  return difference(reckoned, amount).in(unit);
}

/** No more than a tenth of a figure is rounded away. */
const MOST_ROUNDED = 10;

/** Whether yarn is printed in tens or hundreds, to the nearest or the next of them. */
function roundsRoughly(over: number, { figure, amount, unit }: StatedFigure): boolean {
  if (!givenRoundly.has(figure)) return false;
  const own = typeof amount === "number" || typeof unit === "string" ? Number(amount) : amount.in(unit);
  return [10, 100].some(
    (place) => own % place === 0 && place * MOST_ROUNDED <= own && -over < place && over <= place / 2,
  );
}

function roundsTo(over: number, stated: StatedFigure, rounding: Rounding): boolean {
  const { lastPlace } = stated;
  const room = ROOM * lastPlace;
  const isNearest = Math.abs(over) <= lastPlace / 2 + room;
  if (isNearest || rounding === "nearest") return isNearest;
  if (rounding === "in round numbers") return roundsRoughly(over, stated);
  const beyond = rounding === "roundDown" ? over : -over;
  return beyond >= 0 && beyond < lastPlace - room;
}

function amountsOf(stated: Stated): Map<FigureName, Amount> {
  return new Map([...stated].map(([name, { amount }]) => [name, amount]));
}

/** Whether the width that is printed is that of the ends, rounded. */
function widthRounds(stated: Stated, way: WayOfReckoning): boolean {
  const [{ from, value }, width] = [widthOfEnds(way), stated.get("widthInReed")];
  if (width === undefined || !from.every((name) => stated.has(name))) return false;
  return roundsTo(excess(value(amountsOf(stated)), width), width, way.rounding);
}

/** Dents and heddles are left empty here and there: of ten places one at most. */
const FULL = 0.9;

function leavesPlaces(stated: Amount, reckoned: Amount): boolean {
  const [own, most] = [Number(stated), Number(reckoned)];
  return own < most && own >= FULL * most;
}

function findingOf(over: number, isRounded: boolean, unsaid: readonly FigureName[]): CheckedSum["finding"] {
  if (isRounded) return "agrees";
  return over < 0 && unsaid.length > 0 ? "leaves room" : "differs";
}

/** Whether all sums agree, but for those that left room before: no change may only make room. */
export function allAgree(sums: readonly CheckedSum[], before: readonly CheckedSum[]): boolean {
  const leftRoom = (of: FigureName): boolean =>
    before.some(({ figure, finding }) => figure === of && finding === "leaves room");
  return (
    sums.length >= before.length &&
    sums.every(({ figure, finding }) => finding === "agrees" || (finding === "leaves room" && leftRoom(figure)))
  );
}

function inPrintedUnit(reckoned: Amount, { unit }: StatedFigure): Amount {
  return typeof reckoned === "number" || typeof unit === "string" ? reckoned : inUnit(reckoned, unit);
}

/** Every sum that the stated figures allow to be checked; figures left unstated are reckoned on the way. */
export function checkedSums(stated: Stated, way: WayOfReckoning): readonly CheckedSum[] {
  const known = amountsOf(stated);
  const unsaidIn = new Map<FigureName, readonly FigureName[]>();
  const sums: CheckedSum[] = [];
  const unsaidOf = ({ from, mayContain }: Relation): readonly FigureName[] => [
    ...new Set([...mayContain.filter((name) => !known.has(name)), ...from.flatMap((name) => unsaidIn.get(name) ?? [])]),
  ];
  for (const relation of relations(way)) {
    const { answer, from } = relation;
    const figure = stated.get(answer);
    const isWanted = figure !== undefined || !known.has(answer);
    if (!isWanted || !from.every((name) => known.has(name))) continue;
    const [reckoned, unsaid] = [relation.value(known), unsaidOf(relation)];
    if (figure === undefined) {
      known.set(answer, reckoned);
      unsaidIn.set(answer, unsaid);
      continue;
    }
    const over = excess(reckoned, figure);
    const isWidthSum = answer === "ends" && from.includes("widthInReed");
    const isFilled = (): boolean =>
      widthRounds(stated, way) || (way.convention === "places left empty" && leavesPlaces(figure.amount, reckoned));
    const finding = findingOf(over, roundsTo(over, figure, way.rounding) || (isWidthSum && isFilled()), unsaid);
    sums.push({ figure: answer, stated: figure.amount, reckoned: inPrintedUnit(reckoned, figure), unsaid, finding });
  }
  return sums;
}
