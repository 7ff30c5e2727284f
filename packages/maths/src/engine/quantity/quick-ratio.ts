const POWERS_OF_TEN: readonly number[] = /* @__PURE__ */ Array.from({ length: 16 }, (_, power) =>
  Number(`1e${String(power)}`),
);

/** A number as a whole number over a power of ten. */
export type Digits = readonly [over: number, under: number];

type Fraction = readonly [numerator: number, denominator: number];

/** The digits of a decimal text; null where a double does not hold all of them. */
export function digitsOf(value: string): Digits | null {
  if (value.length > 15) return null;
  const point = value.indexOf(".");
  if (point < 0) return [Number(value), 1];
  return [
    Number(value.slice(0, point) + value.slice(point + 1)),
    POWERS_OF_TEN[value.length - point - 1] ?? Number.NaN,
  ];
}

/** One correctly rounded division where both products are whole numbers a double holds; null where they are not. */
export function quickRatio(digits: Digits, from: Fraction, to: Fraction): number | null {
  const [n, d] = [from[0] * to[1], from[1] * to[0]];
  const [over, under] = [digits[0] * n, digits[1] * d];
  const whole = Number.isSafeInteger(n) && Number.isSafeInteger(d) && Number.isSafeInteger(over);
  return whole && Number.isSafeInteger(under) ? over / under : null;
}
