import type { Line } from "../formula/index.js";
import { roughAnswer } from "./roughly.js";
import type { Rough } from "./roughly.js";

const TURNS = 40;

/**
 * The number one input would have to be for the last line to come to the target, by the secant; null where there is none
 * to be found, as beyond a rounding.
 */
export function numberFor(
  lines: readonly Line[],
  values: ReadonlyMap<string, Rough>,
  name: string,
  target: number,
): number | null {
  const start = values.get(name);
  if (typeof start !== "number") return null;
  const off = (x: number): number => roughAnswer(lines, new Map(values).set(name, x)) - target;
  let [before, at] = [start, start === 0 ? 0.01 : start * 1.01];
  let [offBefore, offAt] = [off(before), off(at)];
  for (let turn = 0; turn < TURNS; turn += 1) {
    if (Math.abs(offAt) <= 1e-9 * Math.abs(target)) return at;
    const next = at - (offAt * (at - before)) / (offAt - offBefore);
    if (!Number.isFinite(next)) return null;
    [before, offBefore, at] = [at, offAt, next];
    offAt = off(at);
  }
  return null;
}
