import { oneOf, positive, readInputs, whole } from "../../engine/formula/index.js";
import type { ReportStep } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { compare, inUnit, quantityText, times, unitOf } from "../../engine/quantity/index.js";
import { Length } from "../../units/index.js";
import type { Standing } from "./finding.js";
import { KNOTS } from "./knot.js";
import type { Knot } from "./knot.js";
import { knotClearance } from "./knot-clearance.js";
import type { KnotClearanceInput } from "./knot-clearance.js";

export interface KnotsThroughReedInput extends KnotClearanceInput {
  /** Of the thickest new yarn, in the dent that holds most of them. */
  readonly endsInDent: number;
  readonly knot: Knot;
}

export type KnotGrade = "passes" | "passes with easing" | "expect sticking" | "will not pass";

/** Whether knots pass the reed, as far as a reckoning can tell. */
export interface KnotsThroughReed {
  /** The free space of a dent, in diameters of the thicker thread. */
  readonly clearance: number;
  /** The reckoning may be off by 30 % either way. */
  readonly from: number;
  readonly to: number;
  /** The clearance at which a hard knot of this kind passes untouched. */
  readonly needs: number;
  /** What the new threads of one dent take side by side. */
  readonly sideBySide: Length;
  /** Every grade that the band reaches, the easiest first; alone where nothing passes, or where sticking is sure. */
  readonly grades: readonly KnotGrade[];
  readonly standing: Standing;
  readonly says: string;
  readonly steps: readonly ReportStep<KnotClearanceInput>[];
}

/** Diameter, share of the pitch and hardness of the knot are each known only so far; together about this. */
const OFF = 0.3;
const [LEAST, MOST] = ["0.7", "1.3"];
/** Two threads side by side: a judgement, never measured. */
const STICKS_BELOW = 2;

function gradesBetween(from: number, to: number, needs: number): readonly KnotGrade[] {
  const grades: KnotGrade[] = [];
  if (to >= needs) grades.push("passes");
  if (from < needs && to >= STICKS_BELOW) grades.push("passes with easing");
  if (from < STICKS_BELOW) grades.push("expect sticking");
  return grades;
}

const SHOWN = { step: "0.001" } as const;
const INSTEAD = "Tie behind the heddles, or behind the reed, if the knots pass what they meet there, or thread afresh.";

function inWords(grades: readonly KnotGrade[], range: string, crowd: string): string {
  if (grades.includes("will not pass")) return `${range}${crowd} The knots will not pass. ${INSTEAD}`;
  return `${range} ${grades.join(", or ")}.${crowd} Tie one and draw it through one dent.`;
}

/**
 * Whether knots pass the reed: the free space of a dent in diameters of the thicker thread, its band of 30 % either way, and
 * every grade that the band reaches. No knot passes where not even two threads would, or where the new threads of a dent do
 * not fit side by side at the thinnest they may be. A reckoning only: tie one and draw it through one dent.
 *
 * @param input the free space, measured if it can be, the thickest old and new thread across, the most new threads in a dent,
 *   and the knot
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @source common practice, no source
 * @example
 * const threads = { oldDiameter: millimetres("0.6"), newDiameter: millimetres("0.6"), endsInDent: 2 };
 * knotsThroughReed({ space: millimetres("1.524"), ...threads, knot: "overhand of both ends" }).clearance // 2.54
 */
export function knotsThroughReed(input: KnotsThroughReedInput): KnotsThroughReed {
  const declared = {
    space: positive(Length, "free in one dent"),
    oldDiameter: positive(Length, "across the thickest old thread, pressed together"),
    newDiameter: positive(Length, "across the thickest new thread, pressed together"),
    endsInDent: whole("ends in a dent", "of the thickest new yarn, where there are most", { atLeast: 1 }),
    knot: oneOf(Object.keys(KNOTS) as Knot[], "how each old end is joined to its new one"),
  };
  readInputs("knotsThroughReed", declared, input);
  const { knot, endsInDent, ...step } = input;
  const { space, oldDiameter, newDiameter } = step;
  const clearance = knotClearance(step);
  const [from, to] = [clearance * (1 - OFF), clearance * (1 + OFF)];
  const { least } = KNOTS[knot];
  const thicker = compare(oldDiameter, newDiameter) > 0 ? oldDiameter : newDiameter;
  const sideBySide = times(newDiameter, endsInDent);
  const crowded = compare(sideBySide, space) > 0;
  const blocked =
    compare(times(space, MOST), times(thicker, STICKS_BELOW)) < 0 || compare(times(sideBySide, LEAST), space) > 0;
  const sticks = compare(space, times(thicker, least / 2)) < 0;
  const reached = sticks ? (["expect sticking"] as const) : gradesBetween(from, to, least);
  const grades: readonly KnotGrade[] = blocked ? ["will not pass"] : [...reached];
  const onlySticking = grades.length === 1 && grades[0] === "expect sticking";
  const figure = (q: number): string => q.toFixed(1);
  const range = `A dent is ${figure(clearance)} threads wide, between ${figure(from)} and ${figure(to)} as far as it can be reckoned; this knot needs ${String(least)} to pass untouched${blocked ? "." : ":"}`;
  const crowd = crowded
    ? ` ${String(endsInDent)} new threads side by side take ${quantityText(inUnit(sideBySide, unitOf(space)), SHOWN)} of ${quantityText(space, SHOWN)}.`
    : "";
  return frozen({
    clearance,
    from,
    to,
    needs: least,
    sideBySide,
    grades,
    standing: blocked ? "must" : crowded || onlySticking ? "check" : "free",
    says: inWords(grades, range, crowd),
    steps: [{ calculation: knotClearance, input: step }],
  });
}
