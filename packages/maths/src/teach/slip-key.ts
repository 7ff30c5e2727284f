import type { Scene, Weighed } from "../check/index.js";
import { cellOf, slipOf, told } from "../check/index.js";

/** A wrong answer and what gives it; several sentences where more than one wrong sum does. */
export interface KeyedSlip {
  /** To the decimals the problem asks for, in its unit. */
  readonly answer: string;
  readonly says: readonly string[];
  /** The line of the formula the first stands at; empty where an input or the answer is misread. */
  readonly line: string;
}

/** What a key holds: the likeliest wrong answers, the rest on demand, and the sums that hide behind the rounding. */
export interface SlipKey {
  readonly slips: readonly KeyedSlip[];
  readonly moreSlips: readonly KeyedSlip[];
  readonly hidden: readonly string[];
}

const LIKELIEST = 12;
const SAID = 2;

/** The wrong answers of a question, sorted by number, the twelve likeliest apart. */
export function slipKey(scene: Scene, all: readonly Weighed[], exact: number, decimals: number): SlipKey {
  const step = 10 ** -decimals;
  const right = cellOf(exact, step);
  const cells = new Map<number, Weighed[]>();
  for (const one of all) {
    const cell = cellOf(one.value, step);
    const own = cells.get(cell);
    if (own === undefined) cells.set(cell, [one]);
    else own.push(one);
  }
  const hidden = told(scene, cells.get(right) ?? []).map((one) => slipOf(scene, one, "would fit").says);
  cells.delete(right);
  const weightOf = (found: readonly Weighed[]): number => found.reduce((total, { weight }) => total + weight, 0);
  const byWeight = [...cells].sort(([, a], [, b]) => weightOf(b) - weightOf(a));
  const keyed = ([cell, found]: readonly [number, readonly Weighed[]]): KeyedSlip => {
    const sums = told(scene, found)
      .slice(0, SAID)
      .map((one) => slipOf(scene, one, "would fit"));
    return { answer: (cell * step).toFixed(decimals), says: sums.map(({ says }) => says), line: sums[0]?.line ?? "" };
  };
  const sorted = (some: typeof byWeight): readonly KeyedSlip[] => [...some].sort(([a], [b]) => a - b).map(keyed);
  return { slips: sorted(byWeight.slice(0, LIKELIEST)), moreSlips: sorted(byWeight.slice(LIKELIEST)), hidden };
}

/** The weight of what cannot be seen at these figures: less is a better problem. */
export function hiddenWeight(all: readonly Weighed[], exact: number, decimals: number): number {
  const right = cellOf(exact, 10 ** -decimals);
  return all.reduce(
    (total, { value, weight }) => (cellOf(value, 10 ** -decimals) === right ? total + weight : total),
    0,
  );
}
