import { Decimal } from "../numbers.js";
import { factorBetween, factorOf, powersOf, timesFactor } from "../quantity/index.js";
import type { Factor, Unit } from "../quantity/index.js";
import type { Read } from "./read.js";

/** The units a formula is worked in, so that its numbers are those a hand calculation meets. */
export interface Frame {
  readonly length: Unit<string> | null;
  readonly mass: Unit<string> | null;
  /** Set when every quantity is of this one compound kind, as in a fold of cotton counts: then it is the unit of work. */
  readonly only: Unit<string> | null;
}

type Fraction = readonly [over: Decimal, under: Decimal];

function isPart(unit: Unit<string>): boolean {
  const [length, mass] = powersOf(unit.dimension);
  return length !== 0 || mass !== 0;
}

function unitsIn(read: Read): readonly Unit<string>[] {
  if (read.what === "list") return read.members.flatMap(unitsIn);
  if (read.what === "quantity" && read.reckonedIn !== null) return [];
  return "unit" in read && isPart(read.unit) ? [read.unit] : [];
}

/** The unit of the first length, or first mass, that the inputs bring. */
function firstOf(units: readonly Unit<string>[], part: "length" | "mass"): Unit<string> | null {
  for (const unit of units) {
    const found = unit.dimension === part ? unit : (unit.of?.[part]?.[1] ?? null);
    if (found !== null) return found;
  }
  return null;
}

const NO_UNIT = /* @__PURE__ */ Object.freeze({});
const frames = /* @__PURE__ */ new WeakMap<object, WeakMap<object, WeakMap<object, Frame>>>();

function inner<V extends object>(map: WeakMap<object, V>, unit: Unit<string> | null, make: () => V): V {
  const key = unit ?? NO_UNIT;
  let value = map.get(key);
  if (value === undefined) map.set(key, (value = make()));
  return value;
}

/** One frame for the same units, so that what is worked out for it once can be kept. */
function shared(length: Unit<string> | null, mass: Unit<string> | null, only: Unit<string> | null): Frame {
  const byMass = inner(frames, length, () => new WeakMap<object, WeakMap<object, Frame>>());
  const byOnly = inner(byMass, mass, () => new WeakMap<object, Frame>());
  return inner(byOnly, only, () => Object.freeze({ length, mass, only }));
}

/** Chooses the units of work from the inputs as read. */
export function frameOf(inputs: ReadonlyMap<string, Read>, resultDimension: string): Frame {
  const units: Unit<string>[] = [];
  let asksForUnit = false;
  for (const read of inputs.values()) {
    units.push(...unitsIn(read));
    // Of a system asked for, the length and the mass stand in the formula by themselves.
    asksForUnit ||= read.what === "unit";
  }
  const [first] = units;
  const alone = !asksForUnit && first !== undefined && units.every(({ dimension }) => dimension === first.dimension);
  const only = alone && first.of !== null && resultDimension === first.dimension ? first : null;
  return shared(firstOf(units, "length"), firstOf(units, "mass"), only);
}

/** The exact size of a dimension's unit of work. */
function scaleIn(frame: Frame, dimension: string): Fraction {
  if (frame.only?.dimension === dimension) return asFraction(frame.only.scale);
  let fraction: Fraction = [new Decimal(1), new Decimal(1)];
  const [length, mass] = powersOf(dimension);
  for (const [unit, power] of [
    [frame.length, length],
    [frame.mass, mass],
  ] as const) {
    if (unit === null || power === 0) continue;
    const [over, under] = asFraction(unit.scale);
    const [n, d] = power > 0 ? [over, under] : [under, over];
    const times = Math.abs(power);
    fraction = [fraction[0].times(n.pow(times)), fraction[1].times(d.pow(times))];
  }
  return fraction;
}

function asFraction([over, under]: readonly [number, number]): Fraction {
  return [new Decimal(over), new Decimal(under)];
}

/** One of the unit, counted in the frame or in the unit reckoned in: what a conversion line multiplies by. */
export function factorInto(frame: Frame, unit: Unit<string>, reckonedIn: Unit<string> | null = null): Fraction {
  const [over, under] = asFraction(unit.scale);
  const [n, d] = reckonedIn === null ? scaleIn(frame, unit.dimension) : asFraction(reckonedIn.scale);
  return [over.times(d), under.times(n)];
}

interface Factors {
  readonly into: Factor;
  readonly outOf: Factor;
}

const factors = /* @__PURE__ */ new WeakMap<Frame, WeakMap<Unit<string>, Factors>>();

function factorsOf(frame: Frame, unit: Unit<string>): Factors {
  let known = factors.get(frame);
  if (known === undefined) factors.set(frame, (known = new WeakMap()));
  let both = known.get(unit);
  if (both === undefined) {
    const [over, under] = factorInto(frame, unit);
    known.set(unit, (both = { into: factorOf(over, under), outOf: factorOf(under, over) }));
  }
  return both;
}

/** An amount of a unit, in the frame or in the unit reckoned in. */
export function intoFrame(
  frame: Frame,
  value: Decimal,
  unit: Unit<string>,
  reckonedIn: Unit<string> | null = null,
): Decimal {
  return timesFactor(value, reckonedIn === null ? factorsOf(frame, unit).into : factorBetween(unit, reckonedIn));
}

/** A number of the frame, or of the unit reckoned in, in a unit. */
export function outOfFrame(
  frame: Frame,
  value: Decimal,
  unit: Unit<string>,
  reckonedIn: Unit<string> | null = null,
): Decimal {
  return timesFactor(value, reckonedIn === null ? factorsOf(frame, unit).outOf : factorBetween(reckonedIn, unit));
}
