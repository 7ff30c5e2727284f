import { Decimal } from "../numbers.js";
import { makeQuantity } from "../quantity/index.js";
import type { Read } from "../formula/index.js";

/** A whole number from 0 up to, not with, `below`. */
export type Draw = (below: number) => number;

/** Whole numbers drawn from a seed by mulberry32: the same on every machine, for only 32-bit integers are reckoned with. */
export function drawFrom(seed: number): Draw {
  let state = seed | 0;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) % below;
  };
}

/** The step of numbers that are easily worked by hand: fives from a hundred, wholes from ten, below that quarters. */
function stepOf(size: Decimal, isWhole: boolean): Decimal {
  if (size.gte(100)) return new Decimal(5);
  if (isWhole || size.gte(10)) return new Decimal(1);
  const place = size.gte(1) ? 0 : Math.floor(Math.log10(size.toNumber()));
  return new Decimal(10).pow(place).div(4);
}

/** Whether there is nothing of an input, or of a member of it. */
export function hasZero(read: Read): boolean {
  return read.what === "list" ? read.members.some(hasZero) : "value" in read && read.value.isZero();
}

/** A number easily worked by hand, from half to twice as large. */
function friendly(size: Decimal, isWhole: boolean, draw: Draw): Decimal {
  const step = stepOf(size, isWhole);
  const least = Decimal.max(size.div(2).div(step).ceil(), 1).toNumber();
  const most = Math.max(size.times(2).div(step).floor().toNumber(), least);
  return step.times(least + draw(most - least + 1));
}

/** An input about as large as the one read, in the same unit; units and words stay what they are. */
export function drawnLike(read: Read, isWhole: boolean, draw: Draw): unknown {
  if (read.what === "list") return read.members.map((one) => drawnLike(one, isWhole, draw));
  if (read.what === "quantity") return makeQuantity(read.unit, friendly(read.value, false, draw));
  if (read.what === "number") return friendly(read.value, isWhole, draw).toNumber();
  return read.what === "unit" ? read.unit : read.word;
}
