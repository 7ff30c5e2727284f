import type { Runs } from "../job/runs.js";
import type { Threaded } from "../job/loom.js";
import type { RunKind } from "./laid.js";

/** A heddle as it is threaded; a floating end has none. */
export interface LaidHeddle {
  readonly shaft: number | "floating";
  /** Drawn through it. */
  readonly ends: number;
}

/** A threading in ends, a doubled one counted twice. */
export const THREADING: RunKind<Threaded, LaidHeddle> = {
  counted: "ends",
  isOpen: () => false,
  closed: (threaded) =>
    typeof threaded === "object" ? { shaft: threaded.shaft, ends: threaded.ends } : { shaft: threaded, ends: 1 },
  size: ({ ends }) => ends,
  isNothing: () => false,
  turned: (heddle) => heddle,
  together: () => null,
  placed: (heddle) => heddle,
};

/** A whole list of bare numbers is one repeat, taken over and over; anything else in it makes it the whole width. */
export function bareRepeat<Run>(list: Runs<Run>): readonly number[] | null {
  const numbers = list.flatMap((item) => (typeof item === "number" ? [item] : []));
  return numbers.length === list.length ? numbers : null;
}

/** Whether a list is written whole. */
export function isWhole<Run>(list: Runs<Run> | null): list is Runs<Run> {
  return list !== null && bareRepeat(list) === null;
}
