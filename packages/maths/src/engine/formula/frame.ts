import { Decimal } from "../numbers.js";
import { powersOf } from "../quantity/index.js";
import type { Unit } from "../quantity/index.js";
import type { Read } from "./read.js";

/** The units a formula is worked in, so that its numbers are those a hand calculation meets. */
export interface Frame {
  readonly length: Unit<string> | null;
  readonly mass: Unit<string> | null;
  /** Set when every quantity is of this one compound kind, as in a fold of cotton counts: then it is the unit of work. */
  readonly only: Unit<string> | null;
}

type Fraction = readonly [over: Decimal, under: Decimal];

function unitsIn(read: Read): readonly Unit<string>[] {
  if (read.what === "list") return read.members.flatMap(unitsIn);
  return "unit" in read ? [read.unit] : [];
}

function isCompound(unit: Unit<string>): boolean {
  return unit.of !== null;
}

/** The unit of the first length, or first mass, that the inputs bring. */
function firstOf(units: readonly Unit<string>[], part: "length" | "mass"): Unit<string> | null {
  for (const unit of units) {
    const found = unit.dimension === part ? unit : (unit.of?.[part]?.[1] ?? null);
    if (found !== null) return found;
  }
  return null;
}

/** Chooses the units of work from the inputs as read. */
export function frameOf(inputs: ReadonlyMap<string, Read>, resultDimension: string): Frame {
  const units = [...inputs.values()].flatMap(unitsIn).filter(({ dimension }) => powersOf(dimension).some(Boolean));
  const [first] = units;
  const alone = first !== undefined && units.every(({ dimension }) => dimension === first.dimension);
  const only = alone && isCompound(first) && resultDimension === first.dimension ? first : null;
  return { length: firstOf(units, "length"), mass: firstOf(units, "mass"), only };
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

/** One of the unit, counted in the frame: what a conversion line multiplies by. */
export function factorInto(frame: Frame, unit: Unit<string>): Fraction {
  const [over, under] = asFraction(unit.scale);
  const [n, d] = scaleIn(frame, unit.dimension);
  return [over.times(d), under.times(n)];
}

/** An amount of a unit, in the frame. */
export function intoFrame(frame: Frame, value: Decimal, unit: Unit<string>): Decimal {
  const [over, under] = factorInto(frame, unit);
  return value.times(over).div(under);
}

/** A number of the frame, in a unit. */
export function outOfFrame(frame: Frame, value: Decimal, unit: Unit<string>): Decimal {
  const [over, under] = factorInto(frame, unit);
  return value.times(under).div(over);
}
