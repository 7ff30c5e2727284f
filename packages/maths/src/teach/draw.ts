import { Decimal } from "../engine/numbers.js";
import { isPercent, makeQuantity } from "../engine/quantity/index.js";
import type { Declared, Input, Read } from "../engine/formula/index.js";

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

/** The step of numbers that are easily worked by hand. */
function stepOf(size: Decimal, isWhole: boolean): Decimal {
  if (size.gte(200)) return new Decimal(5);
  if (isWhole || size.gte(40)) return new Decimal(1);
  if (size.gte(10)) return new Decimal("0.5");
  const place = size.gte(1) ? 0 : Math.floor(Math.log10(size.toNumber()));
  return new Decimal(10).pow(place).div(4);
}

/** Sizes of one kind grow and shrink together, so that a part stays less than its whole. */
type Scales = Map<string, Decimal>;

const SMALL = 10;
/** A percentage is drawn so many whole per cents either way. */
const PERCENT = 4;

function near(value: Decimal, scale: Decimal, isWhole: boolean): Decimal {
  if (value.isZero()) return value;
  const step = stepOf(value, isWhole);
  const steps = value.times(scale).div(step).round();
  return Decimal.max(steps, 1).times(step);
}

/** A small count: one less to two more, a pair at least where there was one. */
function smallCount(value: Decimal, draw: Draw): Decimal {
  const least = Decimal.min(value, 2).toNumber();
  return Decimal.max(value.plus(draw(4) - 1), least);
}

function percent(value: Decimal, draw: Draw): Decimal {
  // A figure of many places is the answer of another sum, one of two the constant of a fibre or of a count.
  if (value.decimalPlaces() > 3) return percent(Decimal.max(value.round(), 1), draw);
  if (value.isZero() || value.gt(95) || !value.isInteger()) return value;
  const least = Decimal.max(value.minus(PERCENT), 1);
  const most = Decimal.min(value.plus(PERCENT), 95);
  return least.plus(draw(most.minus(least).toNumber() + 1));
}

function one(read: Read, input: Input<unknown>, scales: Scales, draw: Draw): unknown {
  if (read.what === "unit") return read.unit;
  if (read.what === "word") return read.word;
  if (read.what === "list") return members(read.members, input.member ?? input, scales, draw);
  const { value } = read;
  const { draw: from } = input;
  const given = (number: Decimal): unknown =>
    read.what === "quantity" ? makeQuantity(read.unit, number) : number.toNumber();
  if (from === "as given") return given(value);
  // What is larger than all that is listed is a case of its own.
  if (from !== undefined && value.lte(Math.max(...from))) return given(new Decimal(from[draw(from.length)] ?? 0));
  if (read.what === "quantity" && isPercent(read.unit)) return given(percent(value, draw));
  const isWhole = input.what === "whole" || (input.isCount === true && value.isInteger());
  if (isWhole && value.lt(SMALL)) return given(value.isZero() ? value : smallCount(value, draw));
  const kind = read.what === "quantity" ? read.unit.dimension : input.noun;
  const scale = scales.get(kind) ?? new Decimal(70 + 5 * draw(15)).div(100);
  scales.set(kind, scale);
  return given(near(value, scale, isWhole));
}

/** A list; parts of one whole still add up to it, small counts stay. */
function members(reads: readonly Read[], input: Input<unknown>, scales: Scales, draw: Draw): readonly unknown[] {
  const [first, second] = reads;
  const areParts = input.range.atMost === 1 && first?.what === "quantity" && isPercent(first.unit);
  if (areParts && second?.what === "quantity") {
    const most = Decimal.min(first.value, second.value, 15).floor().toNumber();
    const by = new Decimal(draw(2 * most + 1) - most).times(most > 1 ? 1 : 0);
    const moved = [first.value.plus(by), second.value.minus(by)];
    return reads.map((read, at) =>
      read.what === "quantity" ? makeQuantity(read.unit, moved[at]?.gt(0) === true ? moved[at] : read.value) : null,
    );
  }
  return reads.map((read) =>
    read.what === "number" && read.value.lt(SMALL) ? read.value.toNumber() : one(read, input, scales, draw),
  );
}

/** Inputs of the sizes given, easily worked by hand; those named in `kept` stay what they are. */
export function drawnLike(
  { inputs }: Declared,
  like: ReadonlyMap<string, Read>,
  kept: ReadonlySet<string>,
  draw: Draw,
): Readonly<Record<string, unknown>> {
  const scales: Scales = new Map();
  return Object.fromEntries(
    [...like].map(([name, read]) => {
      const input = inputs[name];
      const own =
        input === undefined
          ? null
          : kept.has(name)
            ? {
                ...input,
                draw: "as given" as const,
                member: input.member && { ...input.member, draw: "as given" as const },
              }
            : input;
      return [name, own === null ? null : one(read, own, scales, draw)];
    }),
  );
}
