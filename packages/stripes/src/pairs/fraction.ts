/** An exact chance or mean in lowest terms. */
export interface Fraction {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

export function fraction(numerator: bigint, denominator: bigint): Fraction {
  let [one, other] = [numerator, denominator];
  while (other > 0n) [one, other] = [other, one % other];
  return Object.freeze({ numerator: numerator / one, denominator: denominator / one });
}
