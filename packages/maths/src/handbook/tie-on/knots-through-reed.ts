import { oneOf, positive, readInputs } from "../../engine/formula/index.js";
import type { ReportStep } from "../../engine/formula/index.js";
import { Length } from "../../units/index.js";
import { KNOTS } from "./knot.js";
import type { Knot } from "./knot.js";
import { knotClearance } from "./knot-clearance.js";
import type { KnotClearanceInput } from "./knot-clearance.js";

export interface KnotsThroughReedInput extends KnotClearanceInput {
  readonly knot: Knot;
}

export type KnotGrade = "passes" | "passes with easing" | "expect sticking";

/** Whether knots pass the reed, as far as a reckoning can tell. */
export interface KnotsThroughReed {
  /** The free space of a dent, in diameters of the thread. */
  readonly clearance: number;
  /** The reckoning may be off by 30 % either way. */
  readonly from: number;
  readonly to: number;
  /** The clearance at which a hard knot of this kind passes untouched. */
  readonly needs: number;
  /** Every grade that the band reaches, the easiest first. */
  readonly grades: readonly KnotGrade[];
  readonly says: string;
  readonly steps: readonly ReportStep<KnotClearanceInput>[];
}

/** Diameter, share of the pitch and hardness of the knot are each known only so far; together about this. */
const OFF = 0.3;
/** Two threads side by side: a judgement, never measured. */
const STICKS_BELOW = 2;

function gradesBetween(from: number, to: number, needs: number): readonly KnotGrade[] {
  const grades: KnotGrade[] = [];
  if (to >= needs) grades.push("passes");
  if (from < needs && to >= STICKS_BELOW) grades.push("passes with easing");
  if (from < STICKS_BELOW) grades.push("expect sticking");
  return grades;
}

/**
 * Whether knots pass the reed: the free space of a dent in diameters of the thread, its band of 30 % either way, and every
 * grade that the band reaches. A reckoning only: tie one and draw it through one dent.
 *
 * @param input the free space, measured if it can be, the two threads across, and the knot
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @source common practice, no source
 * @example
 * const input = { space: millimetres("1.524"), oldDiameter: millimetres("0.6"), newDiameter: millimetres("0.6"), knot: "overhand, two strands together" };
 * knotsThroughReed(input).clearance // 2.54
 */
export function knotsThroughReed(input: KnotsThroughReedInput): KnotsThroughReed {
  const declared = {
    space: positive(Length, "free in one dent"),
    oldDiameter: positive(Length, "across the old thread, pressed together"),
    newDiameter: positive(Length, "across the new thread, pressed together"),
    knot: oneOf(Object.keys(KNOTS) as Knot[], "how each old end is joined to its new one"),
  };
  readInputs("knotsThroughReed", declared, input);
  const { knot, ...step } = input;
  const clearance = knotClearance(step);
  const [from, to] = [clearance * (1 - OFF), clearance * (1 + OFF)];
  const { least } = KNOTS[knot];
  const grades = gradesBetween(from, to, least);
  const figure = (q: number): string => q.toFixed(1);
  const range = `A dent is ${figure(clearance)} threads wide, between ${figure(from)} and ${figure(to)} as far as it can be reckoned`;
  const says = `${range}; this knot needs ${String(least)} to pass untouched: ${grades.join(", or ")}. Tie one and draw it through one dent.`;
  const steps = Object.freeze([Object.freeze({ calculation: knotClearance, input: step })]);
  return Object.freeze({ clearance, from, to, needs: least, grades: Object.freeze(grades), says, steps });
}
