import type { Weighed } from "./evidence.js";

/** The further decimal that would tell the first two sums apart; null where there is no tie or none would. */
export function tellApart([first, second]: readonly Weighed[], decimals: number): string | null {
  if (first === undefined || second === undefined) return null;
  for (let more = 1; more <= 3; more += 1) {
    const [a, b] = [first, second].map(({ value }) => value.toFixed(decimals + more));
    if (a !== b)
      return `with ${more === 1 ? "one more decimal" : `${String(more)} more decimals`} they would differ, ${String(a)} and ${String(b)}`;
  }
  return "for these numbers the two are one";
}
