// How likely a plain slip of arithmetic is to land on a number: what a name must do better than.
import { WHOLE } from "./tolerances.js";

/** All answers that are written alike at so fine a step. */
export const cellOf = (value: number, step: number): number => Math.floor(value / step + 0.5 + WHOLE);

/** By how much each figure differs that does; a number with fewer figures has noughts before it. */
function figuresDiffering(a: string, b: string): readonly number[] {
  const length = Math.max(a.length, b.length);
  const [one, other] = [a.padStart(length, "0"), b.padStart(length, "0")];
  return Array.from(one).flatMap((figure, at) =>
    figure === other[at] ? [] : [Math.abs(Number(figure) - Number(other[at]))],
  );
}

/**
 * The answer brought up or down to a hundred, a ten, a whole, a half or a quarter: where one ends who stops early, the likelier
 * the nearer it is to the last place.
 */
export function roundCells(exact: number, step: number): ReadonlyMap<number, number> {
  const found = new Map<number, number>();
  for (const to of [0.25, 0.5, 1, 10, 100])
    for (const way of to > step ? [Math.floor, Math.ceil] : []) {
      const cell = cellOf(way(exact / to) * to, step);
      if (cell !== cellOf(exact, step)) found.set(cell, Math.max(found.get(cell) ?? 0, Math.min(1, (10 * step) / to)));
    }
  const all = [...found.values()].reduce((total, one) => total + one, 0);
  return new Map([...found].map(([cell, one]) => [cell, one / all]));
}

/** What share of plain slips differ in one figure, lie within five of the last place, are a round number, or are of any size. */
const SHARES = { figure: 0.35, last: 0.15, round: 0.08, size: 0.42 } as const;

/** The chance that a plain slip of arithmetic lands in a cell. */
export function chanceOf(cell: number, right: number, step: number, rounds: ReadonlyMap<number, number>): number {
  const value = Math.abs(cell) * step;
  const [text, own] = [Math.abs(cell), Math.abs(right)].map((one) => one.toFixed(0)) as [string, string];
  const [by, more] = figuresDiffering(text, own);
  const figure = more === undefined && by !== undefined ? (by === 1 ? 0.3 : 0.4 / 7) / own.length : 0;
  const last = Math.abs(cell - right) <= 5 ? 0.1 : 0;
  const figures = SHARES.figure * figure + SHARES.last * last + SHARES.round * (rounds.get(cell) ?? 0);
  if (value === 0 || right === 0) return figures;
  const apart = Math.abs(Math.log(value / (Math.abs(right) * step)));
  const size = (step / value) * ((0.6 * Math.exp(-apart / 0.15)) / 0.3 + (0.4 * Math.exp(-apart)) / 2);
  return figures + SHARES.size * size;
}
