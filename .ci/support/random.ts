/** Whole numbers from 0 up to, not with, a bound. */
export interface Random {
  below(bound: number): number;
}

/** The same numbers for the same seed, on every machine: a linear congruence of 48 bits, its upper half taken. */
export function randomFrom(seed: number): Random {
  let state = (BigInt(seed) * 0x5deece66dn + 11n) & 0xffffffffffffn;
  return {
    below: (bound) => {
      state = (state * 0x5deece66dn + 11n) & 0xffffffffffffn;
      return Number(state >> 17n) % bound;
    },
  };
}
