import { waits } from "../core/waits.js";

/** The yarn that allows the fewest pieces. */
export interface RunsOut {
  readonly yarn: string;
  readonly allowed: number;
}

/** Which of the yarns runs out first; the first named of those that allow as many. */
export function runsOutFirst(given: {
  readonly names: readonly string[];
  readonly allowed: readonly number[];
}): RunsOut {
  const all = given.names.map((yarn, at) => ({ yarn, allowed: given.allowed[at] ?? 0 }));
  if (all.length === 0) return waits("stripes");
  return all.reduce((first, one) => (one.allowed < first.allowed ? one : first));
}
