import { cellOf, chanceOf, roundCells } from "./plain-slip.js";
import { amountOf, answerOf } from "./hand.js";
import type { Amounts } from "./hand.js";
import { FAMILIES, handIn } from "./reason.js";
import type { Family, Reason, Scene } from "./reason.js";
import { SAME } from "./tolerances.js";

/** A wrong sum with its answer in doubles, in the unit of the claim, and how likely it is among wrong methods. */
export interface Weighed {
  readonly reason: Reason;
  readonly value: number;
  readonly weight: number;
}

/** All answers that are written alike: the wrong sums that give it, and the chance that a plain slip lands there. */
export interface Cell {
  readonly found: readonly Weighed[];
  readonly weight: number;
  readonly chance: number;
  /** The chance of a plain slip in this cell and all that are better evidence together. */
  readonly spent: number;
}

/** Of plain slips, so many may be given a name at most; and so many where a name is only asked for. */
export const BUDGET = 0.02;
export const ASKED_BUDGET = 0.05;

/** What a wrong sum comes to for other numbers. */
export function valueOf(reason: Reason, values: Amounts): number {
  return answerOf(handIn(reason), reason.taken?.(values) ?? values);
}

/** What it comes to for the numbers of the question: only what differs is worked out. */
function ownValue({ hand, place, taken }: Reason, { values, known }: Scene): number {
  if (taken !== undefined) return answerOf(hand, taken(values));
  return place === undefined ? answerOf(hand, values, known) : place.answer(amountOf(hand, values, known));
}

/** Every wrong sum that comes to another answer than the right one, with its weight. */
export function weighed(scene: Scene, reasons: readonly Reason[], exact: number): readonly Weighed[] {
  const shares = new Map<Family, number>();
  const found = reasons.flatMap((reason) => {
    const value = ownValue(reason, scene);
    const counts = Number.isFinite(value) && (exact <= 0 || value > 0) && Math.abs(value) < 1e15;
    if (!counts || Math.abs(value - exact) <= SAME * Math.abs(exact)) return [];
    shares.set(reason.family, (shares.get(reason.family) ?? 0) + (reason.share ?? 1));
    return [{ reason, value }];
  });
  const all = [...shares.keys()].reduce((total, family) => total + FAMILIES[family], 0);
  return found.map(({ reason, value }) => {
    const { family, share = 1 } = reason;
    return { reason, value, weight: (FAMILIES[family] / all) * (share / (shares.get(family) ?? 1)) };
  });
}

/** The cells of a question at so fine a step, the best evidence first; `near` are answers that a sound sum may reach. */
export function cellsOf(all: readonly Weighed[], exact: number, step: number, near: number): ReadonlyMap<number, Cell> {
  const right = cellOf(exact, step);
  const found = new Map<number, Weighed[]>();
  for (const one of all) {
    const cell = cellOf(one.value, step);
    if (cell === right || Math.abs(cell * step - exact) <= near) continue;
    const own = found.get(cell);
    if (own === undefined) found.set(cell, [one]);
    else own.push(one);
  }
  const rounds = roundCells(exact, step);
  let spent = 0;
  const cells = [...found].map(([cell, own]) => {
    const weight = own.reduce((total, one) => total + one.weight, 0);
    return { cell, found: own, weight, chance: chanceOf(cell, right, step, rounds) };
  });
  cells.sort((a, b) => b.weight / b.chance - a.weight / a.chance);
  return new Map(
    cells.map(({ cell, ...one }) => {
      spent += one.chance;
      return [cell, { ...one, spent }];
    }),
  );
}

/** Of several sentences for one wrong sum the one is told that says most of what was done. */
const BEST: readonly Family[] = [
  ...([
    "trade",
    "power",
    "percentage",
    "percentages",
    "term",
    "reach",
    "unit",
    "constant",
    "list",
    "base",
    "line",
  ] as const),
  ...(["factor", "name", "count", "rounding", "early", "copied", "answer"] as const),
];

/** Wrong sums that are one: equal for these inputs and for others; the heaviest first. */
export function told(scene: Scene, found: readonly Weighed[]): readonly Weighed[] {
  const [once, twice] = [others(scene.values, 1), others(scene.values, 2)];
  const same = new Map<string, Weighed>();
  for (const one of found) {
    const key = [one.value, valueOf(one.reason, once), valueOf(one.reason, twice)].map((x) => x.toPrecision(9)).join();
    const before = same.get(key);
    if (before === undefined) same.set(key, one);
    else {
      const heavier = BEST.indexOf(before.reason.family) <= BEST.indexOf(one.reason.family);
      same.set(key, { ...(heavier ? before : one), weight: before.weight + one.weight });
    }
  }
  return [...same.values()].sort((a, b) => b.weight - a.weight);
}

/** Other numbers for the same question, a little larger or smaller each in its own way. */
export function others(values: Amounts, turn: number): Amounts {
  let at = turn * 7;
  const moved = (x: number): number => {
    at += 1;
    return x * (1 + ((at * 37) % 23) / 100 + 0.013 * turn);
  };
  return new Map([...values].map(([name, own]) => [name, typeof own === "number" ? moved(own) : own.map(moved)]));
}
