import { Decimal, kept, keptQuotient } from "../numbers.js";
import type { Decimal as DecimalNumber } from "../numbers.js";
import type { Unit } from "./unit.js";

/** A fraction; null stands for one, by which nothing need be multiplied or divided. */
export type Factor = readonly [over: DecimalNumber | null, under: DecimalNumber | null];

const SHORT = 20;

/** The fraction of two whole numbers as one short decimal number where it is that, else in lowest terms. */
export function factorOf(over: DecimalNumber, under: DecimalNumber): Factor {
  const quotient = over.div(under);
  if (quotient.precision() <= SHORT && quotient.times(under).eq(over)) return [quotient.eq(1) ? null : quotient, null];
  let [a, b] = [over, under];
  while (!b.isZero()) [a, b] = [b, a.mod(b)];
  const n = over.div(a);
  return [n.eq(1) ? null : n, under.div(a)];
}

/** A number times a fraction. */
export function timesFactor(value: DecimalNumber, [over, under]: Factor): DecimalNumber {
  const times = over === null ? value : value.times(over);
  return under === null ? times : times.div(under);
}

/** The same, as it is kept. */
export function keptTimesFactor(value: DecimalNumber, [over, under]: Factor): DecimalNumber {
  const times = over === null ? value : value.times(over);
  return under === null ? kept(times) : keptQuotient(times, under);
}

const factors = /* @__PURE__ */ new WeakMap<Unit<string>, WeakMap<Unit<string>, Factor>>();

/** One of the first unit counted in the second; remembered, as the same two meet again and again. */
export function factorBetween(from: Unit<string>, to: Unit<string>): Factor {
  let known = factors.get(from);
  if (known === undefined) factors.set(from, (known = new WeakMap()));
  let factor = known.get(to);
  if (factor === undefined) {
    const over = new Decimal(from.scale[0]).times(to.scale[1]);
    known.set(to, (factor = factorOf(over, new Decimal(from.scale[1]).times(to.scale[0]))));
  }
  return factor;
}
