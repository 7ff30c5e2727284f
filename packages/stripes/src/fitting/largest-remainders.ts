import { item } from "../sequence/item.js";

/** Parts of the shares at the open indexes, and the indexes among which a tie was decided; closed ones receive 0. */
export function largestRemainders(
  shares: readonly number[],
  open: readonly number[],
  total: number,
): { readonly parts: readonly number[]; readonly tied: readonly number[] } {
  const sum = open.reduce((all, index) => all + BigInt(item(shares, index)), 0n);
  const parts = shares.map(() => 0);
  const remainders = shares.map(() => 0n);
  let left = total;
  for (const index of open) {
    const product = BigInt(item(shares, index)) * BigInt(total);
    parts[index] = Number(product / sum);
    remainders[index] = product % sum;
    left -= item(parts, index);
  }
  const order = [...open].sort((one, other) => compare(item(remainders, other), item(remainders, one)));
  const cut = left === 0 ? -1n : item(remainders, item(order, left - 1));
  const above = order.filter((index) => item(remainders, index) > cut);
  const atCut = order.filter((index) => item(remainders, index) === cut);
  const wanted = left - above.length;
  const chosen = left === 0 ? [] : [...above, ...decided(shares, atCut, wanted)];
  for (const index of chosen) parts[index] = item(parts, index) + 1;
  return { parts, tied: wanted > 0 && wanted < atCut.length ? atCut.sort((one, other) => one - other) : [] };
}

/** As many of the tied indexes as wanted, in pairs from the outside inwards if the shares are a mirror. */
function decided(shares: readonly number[], tied: readonly number[], wanted: number): readonly number[] {
  const far = shares.length - 1;
  const mirrored = shares.every((share, index) => share === shares[far - index]);
  const fromEdge = (index: number): number => (mirrored ? Math.min(index, far - index) : index);
  const queue = [...tied].sort((one, other) => fromEdge(one) - fromEdge(other) || one - other);
  const middle = far / 2;
  if (!mirrored || wanted % 2 === 0 || !queue.includes(middle)) {
    return queue.filter((index) => !mirrored || wanted % 2 === 1 || index !== middle).slice(0, wanted);
  }
  return [middle, ...queue.filter((index) => index !== middle).slice(0, wanted - 1)];
}

function compare(one: bigint, other: bigint): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
