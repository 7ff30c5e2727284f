import type { Unit } from "../quantity/index.js";
import type { Declared } from "./declaration.js";
import type { Input } from "./input.js";
import type { Read } from "./read.js";

type Reads = ReadonlyMap<string, Read>;

function unitGiven(reads: Reads, field: string): Unit<string> | null {
  const read = reads.get(field);
  return read?.what === "unit" ? read.unit : null;
}

/** The unit that a rule of thumb reckons an amount of a kind in; null where it goes into the units of work. */
function reckonedUnit({ reckonedIn }: Input<unknown>, dimension: string, reads: Reads): Unit<string> | null {
  if (reckonedIn === undefined) return null;
  if (typeof reckonedIn === "string") return unitGiven(reads, reckonedIn);
  return reckonedIn.find((unit) => unit.dimension === dimension) ?? null;
}

/** Tells each of these amounts the unit that the formula has it in, now that all are read. */
export function reckon(
  reads: Map<string, Read>,
  reckoned: readonly (readonly [field: string, input: Input<unknown>])[],
): void {
  for (const [field, input] of reckoned) {
    const read = reads.get(field);
    if (read?.what !== "quantity") continue;
    reads.set(field, { ...read, reckonedIn: reckonedUnit(input, read.unit.dimension, reads) });
  }
}

/** Whether the last line already counts in a unit: in the one asked for, or in that of a rule of thumb. */
export function countsInUnit({ result, resultIn, inputs }: Declared): boolean {
  return result.reckonedIn !== undefined || (typeof resultIn === "string" && inputs[resultIn]?.what === "unit");
}

/** The unit the last line counts in by itself; null where that is the frame. */
export function countedUnit({ result, resultIn }: Declared, reads: Reads): Unit<string> | null {
  if (result.reckonedIn !== undefined) return reckonedUnit(result, result.dimension, reads);
  return typeof resultIn === "string" ? unitGiven(reads, resultIn) : null;
}
