import { PLAIN_STEP } from "../numbers.js";
import { described } from "../quantity/index.js";
import type { Unit } from "../quantity/index.js";
import { refuse } from "../refusal.js";
import type { Place, RefusalCode } from "../refusal.js";
import { limitsOf } from "../formula/index.js";
import type { Input, Range } from "../formula/index.js";
import type { Node } from "./blocks.js";

/** The least and the first too large number of an input or answer, counted in the unit of its column. */
interface Bounds {
  readonly least: number;
  readonly tooLarge: number;
}

/** Where the numbers of one column come from, block by block. */
export interface Source extends Bounds {
  readonly where: Place;
  readonly input: Input<unknown>;
  readonly own: Float64Array;
  /** The numbers of the block now worked on: a view of a typed column, or `own` filled from any other. */
  block: Float64Array;
}

/** What a formula, or a line of it that has a least value, comes to. */
export interface Outcome extends Bounds {
  readonly where: Place;
  readonly noun: string;
  /** Whether it counts things, of which there are no parts. */
  readonly wholes: boolean;
  readonly root: Node;
}

export function boundsOf(range: Range, unit: Unit<string> | null): Bounds {
  const [over, under] = unit?.scale ?? [1, 1];
  const least = range.above === 0 ? Number.MIN_VALUE : ((range.atLeast ?? -Infinity) * under) / over;
  const tooLarge = range.atMost === undefined ? (range.below ?? Infinity) : range.atMost * (1 + Number.EPSILON);
  return { least, tooLarge: (tooLarge * under) / over };
}

/** Looks at every number of a block; the first that does not fit is refused with its row. */
export function checkGiven(
  { where, input, least, tooLarge }: Source,
  block: Float64Array,
  start: number,
  rows: number,
): void {
  const wholes = input.what === "whole";
  let fitting = 0;
  for (let row = 0; row < rows; row++) fitting += block[row]! >= least && block[row]! < tooLarge ? 1 : 0;
  if (wholes) for (let row = 0; row < rows; row++) fitting -= Number.isSafeInteger(block[row]!) ? 0 : 1;
  if (fitting === rows) return;
  const fits = (x: number): boolean => x >= least && x < tooLarge && (!wholes || Number.isSafeInteger(x));
  const at = block.subarray(0, rows).findIndex((x) => !fits(x));
  const x = block[at]!;
  const code: RefusalCode = Number.isFinite(x)
    ? x >= least && x < tooLarge
      ? "not-whole"
      : "out-of-range"
    : "not-a-number";
  const expected = wholes
    ? `a whole number of ${input.noun} within its range (${input.meaning})`
    : `${input.noun} within its range (${input.meaning})`;
  const place: Place = [...where, start + at];
  const [received, params] = [described(x), limitsOf(input)];
  refuse(code, place, expected, received, "", params);
}

/** What doubles leave over beside a bound. */
const RESIDUE = Number(PLAIN_STEP);

/** Looks at every answer of a block; what doubles left beside the least or a whole number is put on it, anything else outside is refused. */
export function checkOutcome(
  { where, noun, wholes, least, tooLarge }: Outcome,
  block: Float64Array,
  start: number,
): void {
  let fitting = 0;
  for (const x of block) {
    fitting += x >= least && x < tooLarge && x !== -Infinity ? 1 : 0;
  }
  if (wholes) for (const x of block) fitting -= Number.isInteger(x) ? 0 : 1;
  if (fitting === block.length) return;
  const beside = (x: number, bound: number): boolean => Math.abs(x - bound) <= RESIDUE * Math.max(1, Math.abs(bound));
  for (let row = 0; row < block.length; row++) {
    const x = block[row]!;
    const inside = x >= least && x < tooLarge && x !== -Infinity;
    if (inside && !wholes) continue;
    if (least !== Number.MIN_VALUE && beside(x, least)) block[row] = least;
    else if (inside && beside(x, Math.round(x))) block[row] = Math.round(x);
    else {
      refuse(
        "no-answer",
        [...where, start + row],
        wholes ? `a whole number of ${noun} within its range` : `${noun} within its range`,
        described(x),
        "The numbers of this row together give no such thing: look at each of them once more.",
      );
    }
  }
}
