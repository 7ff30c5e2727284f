/** The greatest whole number that divides two others, 1 or more each. */
export function greatestCommonMeasure(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y > 0) [x, y] = [y, x % y];
  return x;
}
