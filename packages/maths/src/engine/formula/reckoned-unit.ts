import type { Unit } from "../quantity/index.js";
import type { Input } from "./input.js";

/** The unit that a rule of thumb reckons an amount of a kind in; null where it goes into the units of work. */
export function reckonedUnit(
  { reckonedIn }: Input<unknown>,
  dimension: string,
  unitGiven: (field: string) => Unit<string> | null,
): Unit<string> | null {
  if (reckonedIn === undefined) return null;
  if (typeof reckonedIn === "string") return unitGiven(reckonedIn);
  return reckonedIn.find((unit) => unit.dimension === dimension) ?? null;
}
