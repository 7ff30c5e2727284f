const POWERS_OF_TEN: readonly number[] = Array.from({ length: 16 }, (_, power) => Number(`1e${String(power)}`));

/** One correctly rounded division where both products are whole numbers a double holds; null where they are not. */
export function quickRatio(value: string, n: number, d: number): number | null {
  if (value.length > 15) return null;
  const point = value.indexOf(".");
  const whole = point < 0 ? Number(value) : Number(value.slice(0, point) + value.slice(point + 1));
  const over = whole * n;
  const under = point < 0 ? d : d * (POWERS_OF_TEN[value.length - point - 1] ?? Number.NaN);
  return Number.isSafeInteger(over) && Number.isSafeInteger(under) ? over / under : null;
}
