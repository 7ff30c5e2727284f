const cut = (word: bigint): bigint => BigInt.asUintN(64, word);
const turned = (word: bigint, by: bigint): bigint => cut(word << by) | (word >> (64n - by));

/** Blackman and Vigna's generator xoroshiro128+ (2018), on two words of 64 bits; gives the low 32 of each sum. */
export function generator(seed: number): () => number {
  let one = cut(~BigInt(seed));
  let other = BigInt(seed) << 32n;
  return () => {
    const drawn = one + other;
    other ^= one;
    one = turned(one, 24n) ^ other ^ cut(other << 16n);
    other = turned(other, 37n);
    return Number(BigInt.asUintN(32, drawn));
  };
}
