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
  if (left === 0) return { parts, tied: [] };
  const order = [...open].sort((one, other) => Number(item(remainders, other) - item(remainders, one)));
  const cut = item(remainders, item(order, left - 1));
  const atCut = order.filter((index) => item(remainders, index) === cut);
  const above = order.slice(0, order.indexOf(item(atCut, 0)));
  const wanted = left - above.length;
  const rank = rankOf(shares, wanted);
  const chosen = [...atCut].sort((one, other) => rank(one) - rank(other)).slice(0, wanted);
  for (const index of [...above, ...chosen]) parts[index] = item(parts, index) + 1;
  return { parts, tied: wanted < atCut.length ? atCut : [] };
}

/** Who comes first in a tie: from the left; of a mirror in pairs from the outside, the middle one first for an odd one. */
function rankOf(shares: readonly number[], wanted: number): (index: number) => number {
  const far = shares.length - 1;
  if (shares.some((share, index) => share !== shares[far - index])) return (index) => index;
  return (index) => (2 * index !== far ? Math.min(index, far - index) : wanted % 2 === 1 ? -1 : far);
}
