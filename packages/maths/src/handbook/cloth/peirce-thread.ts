import { Decimal, kept } from "../../engine/numbers.js";
import { makeQuantity } from "../../engine/quantity/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { percentAdded } from "../../units/index.js";
import type { Addition, Length } from "../../units/index.js";

/** One thread of a plain weave, bent round the threads it crosses as Peirce drew it. */
export interface PeirceThread {
  /** Degrees at which it lies steepest to the middle of the cloth. */
  readonly angle: number;
  /** Between the middle of the thread at its highest and at its lowest. */
  readonly height: Length;
  /** Of thread from one crossing to the next. */
  readonly length: Length;
  /** Of this thread, on the cloth. */
  readonly crimp: Addition;
}

/** As lengths in one unit and an angle in radians. @internal */
export interface Bent {
  readonly angle: Decimal;
  readonly height: Decimal;
  readonly length: Decimal;
}

/** @internal */
export function peirceThread(unit: Unit<"length">, spacing: Decimal, { angle, height, length }: Bent): PeirceThread {
  return Object.freeze({
    angle: angle.times(180).div(Decimal.acos(-1)).toNumber(),
    height: makeQuantity(unit, kept(height)),
    length: makeQuantity(unit, kept(length)),
    crimp: percentAdded(kept(length.div(spacing).minus(1).times(100)).toFixed()),
  });
}
