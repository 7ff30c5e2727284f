/** An exact chance or mean in lowest terms; its digits as text, for they may be more than a number holds. */
export interface Fraction {
  readonly numerator: string;
  readonly denominator: string;
}

/** The same while it is still worked with. */
export interface Ratio {
  readonly over: bigint;
  readonly under: bigint;
}

export function lowest(over: bigint, under: bigint): Ratio {
  let [one, other] = [under, over];
  while (other > 0n) [one, other] = [other, one % other];
  return { over: over / one, under: under / one };
}

export function fraction(numerator: bigint, denominator: bigint): Fraction {
  const { over, under } = lowest(numerator, denominator);
  return Object.freeze({ numerator: String(over), denominator: String(under) });
}
