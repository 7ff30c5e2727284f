import { frozen } from "../../engine/frozen.js";
import { readThreading } from "./threading.js";
import type { Threading } from "./threading.js";

export interface HeddlesPerShaft {
  /** On shaft 1, on shaft 2 and so on. */
  readonly onEach: readonly number[];
  readonly heddles: number;
}

/**
 * Heddles that a threading takes on each shaft: those of a repeat as often as it stands, and those of the borders.
 *
 * A doubled end shares its heddle and is written once.
 *
 * @param input how many shafts, and the parts of the threading with how often each stands
 * @throws QuantityError "out-of-range" for a shaft the loom has not
 * @source common practice
 * @example heddlesPerShaft({ shafts: 4, parts: [{ threading: [1, 2, 3, 4, 3, 2], times: 60 }, { threading: [1], times: 1 }] }).onEach // [61, 120, 120, 60]
 */
export function heddlesPerShaft(input: Threading): HeddlesPerShaft {
  readThreading("heddlesPerShaft", input);
  const onEach = Array.from({ length: input.shafts }, () => 0);
  for (const { threading, times } of input.parts) {
    for (const shaft of threading) onEach[shaft - 1] = (onEach[shaft - 1] ?? 0) + times;
  }
  const heddles = onEach.reduce((total, on) => total + on, 0);
  return frozen({ onEach, heddles });
}
