import { sameColour } from "../sequence/same-colour.js";

const ALL = 0xffffffff;

/**
 * Pairs of indexes of the ends that two warps can keep in their order, as many as there can be.
 *
 * The columns of the usual table go 32 to a word (Hyyrö 2004): a bit is clear where the table grows by one. Each row of
 * bits is kept, for the way back through them.
 */
export function keptEnds<C>(from: readonly C[], to: readonly C[]): readonly (readonly [number, number])[] {
  const words = Math.ceil(to.length / 32);
  const places = new Map<C, Int32Array>();
  for (const [j, colour] of to.entries()) {
    const bits = places.get(colour) ?? new Int32Array(words);
    bits[j >> 5] = (bits[j >> 5] ?? 0) | (1 << (j & 31));
    places.set(colour, bits);
  }
  const nowhere = new Int32Array(words);
  const table = new Int32Array((from.length + 1) * words).fill(-1);
  for (const [i, colour] of from.entries()) {
    const matches = places.get(colour) ?? nowhere;
    for (let word = 0, carry = 0; word < words; word++) {
      const before = table[i * words + word] ?? 0;
      const match = matches[word] ?? 0;
      const sum = (before >>> 0) + ((before & match) >>> 0) + carry;
      carry = sum > ALL ? 1 : 0;
      table[(i + 1) * words + word] = sum | (before & ~match);
    }
  }
  const kept: (readonly [number, number])[] = [];
  let [i, j] = [from.length - 1, to.length - 1];
  while (i >= 0 && j >= 0) {
    const grows = ((table[(i + 1) * words + (j >> 5)] ?? 0) & (1 << (j & 31))) === 0;
    if (sameColour(from[i], to[j])) kept.push([i--, j--]);
    else if (grows) i--;
    else j--;
  }
  return kept.reverse();
}
