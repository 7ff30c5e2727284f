import { missingOr, refuse } from "../refusal.js";
import type { Place } from "../refusal.js";
import { UNIT } from "../looked-at.js";
import { described } from "./described.js";
import type { Unit } from "./unit.js";

/** Units made by this copy of the package: they need no proof each time they are used. */
const ours = /* @__PURE__ */ new WeakSet();

/** A unit just made, held to be one from now on. */
export function ourUnit<U extends object>(made: U): U {
  ours.add(made);
  return made;
}

/** Whether this is a unit of ours, of this copy of the package or of another. */
export function isUnit(candidate: unknown): candidate is Unit<string> {
  if (typeof candidate !== "function") return false;
  return ours.has(candidate) || (Object.hasOwn(candidate, UNIT) && Object.isFrozen(candidate));
}

/** Whether this is a list of units, one or more, all of the dimension. */
export function areUnitsOf(dimension: string | undefined, units: unknown): boolean {
  return (
    Array.isArray(units) &&
    units.length > 0 &&
    units.every((one: unknown) => isUnit(one) && one.dimension === dimension)
  );
}

/** Whether amounts in the two can be told in each other. */
function areOneKind(one: Unit<string>, other: Unit<string>): boolean {
  return one.dimension === other.dimension && (one.alone === null || one.name === other.name);
}

/** Refuses a unit of another kind, naming both. */
export function requireSameDimension(own: Unit<string>, other: unknown, where: Place): asserts other is Unit<string> {
  if (isUnit(other) && areOneKind(other, own)) return;
  refuse(
    isUnit(other) ? "wrong-kind" : missingOr(other, "unknown-unit"),
    where,
    own.alone === null ? `a unit of ${own.dimension}` : `${own.dimension} in ${own.name}`,
    isUnit(other) ? `${other.name}, a unit of ${other.dimension}` : described(other),
    !isUnit(other)
      ? "Units are values you import, such as yards."
      : ((other.dimension === own.dimension ? own.alone : null) ?? "The two are different kinds of thing."),
    { kind: own.dimension },
  );
}
