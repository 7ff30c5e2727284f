import type { FigureName } from "./figures.js";
import { relations } from "./relations.js";
import type { Relation, SumConvention } from "./relations.js";
import type { StatedFigure } from "./stated-figure.js";

export type Rounding = "nearest" | "down" | "up" | "to round figures";

/** A sum that a stated figure answers: what is printed and what the other figures give. */
export interface CheckedSum {
  readonly figure: FigureName;
  readonly stated: number;
  readonly reckoned: number;
  readonly agrees: boolean;
}

export type Stated = ReadonlyMap<FigureName, StatedFigure>;

/** Room for the last digits of a double: a printed figure carries far fewer. */
const ROOM = 1e-9;

function roundsTo(reckoned: number, { value, lastPlace, roundPlace }: StatedFigure, rounding: Rounding): boolean {
  const over = reckoned - value;
  const room = ROOM * Math.max(Math.abs(value), Math.abs(reckoned));
  const nearest = Math.abs(over) <= lastPlace / 2 + room;
  if (nearest || rounding === "nearest") return nearest;
  if (rounding === "down") return over >= 0 && over < lastPlace - room;
  if (rounding === "up") return over <= 0 && -over < lastPlace - room;
  return Math.abs(over) <= roundPlace / 2 + room;
}

/** The width from the ends: a page may give the width only roughly, and reckon from the ends. */
function widthRounds(stated: Stated, convention: SumConvention | null, rounding: Rounding): boolean {
  const [ends, sett, width] = [stated.get("ends"), stated.get("sett"), stated.get("widthInReed")];
  if (ends === undefined || sett === undefined || width === undefined) return false;
  const beside = convention === "edge ends left out" ? 0 : (stated.get("edgeEnds")?.value ?? 0);
  return roundsTo((ends.value - beside) / sett.value, width, rounding);
}

function reckonedBy({ from, value }: Relation, values: ReadonlyMap<FigureName, number>): number | null {
  if (!from.every((name) => values.has(name))) return null;
  const found = value((name) => values.get(name) ?? 0);
  return Number.isFinite(found) ? found : null;
}

/** Every sum that the stated figures allow to be checked; figures left unstated are reckoned on the way. */
export function checkedSums(
  stated: Stated,
  convention: SumConvention | null,
  rounding: Rounding,
): readonly CheckedSum[] {
  const values = new Map([...stated].map(([name, { value }]) => [name, value]));
  const sums: CheckedSum[] = [];
  for (const relation of relations(convention)) {
    const reckoned = reckonedBy(relation, values);
    if (reckoned === null) continue;
    const { answer } = relation;
    const figure = stated.get(answer);
    if (figure === undefined) {
      if (!values.has(answer)) values.set(answer, reckoned);
      continue;
    }
    const isWidthSum = answer === "ends" && relation.from.includes("widthInReed");
    const agrees = roundsTo(reckoned, figure, rounding) || (isWidthSum && widthRounds(stated, convention, rounding));
    sums.push({ figure: answer, stated: figure.value, reckoned, agrees });
  }
  return sums;
}
