import { isUnit } from "./quantity.js";

/** Whether this is a list of units, one or more, all of the dimension. */
export function areUnitsOf(dimension: string | undefined, units: unknown): boolean {
  return (
    Array.isArray(units) &&
    units.length > 0 &&
    units.every((one: unknown) => isUnit(one) && one.dimension === dimension)
  );
}
