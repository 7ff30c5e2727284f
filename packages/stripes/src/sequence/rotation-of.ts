import { item } from "./item.js";

/**
 * The least number of items to move from the beginning of `from` to its end so that it becomes `to`; null if none.
 * Knuth, Morris and Pratt's search, so that it grows only with the length.
 */
export function rotationOf<T>(
  from: readonly T[],
  to: readonly T[],
  same: (one: T, other: T) => boolean,
): number | null {
  const length = to.length;
  if (from.length !== length) return null;
  const fallback = [0];
  for (let index = 1, matched = 0; index < length; index++) {
    while (matched > 0 && !same(item(to, index), item(to, matched))) matched = item(fallback, matched - 1);
    if (same(item(to, index), item(to, matched))) matched++;
    fallback.push(matched);
  }
  for (let index = 0, matched = 0; index < 2 * length - 1; index++) {
    const next = item(from, index % length);
    while (matched > 0 && !same(next, item(to, matched))) matched = item(fallback, matched - 1);
    if (same(next, item(to, matched))) matched++;
    if (matched === length) return index - length + 1;
  }
  return null;
}
