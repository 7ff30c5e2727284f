import { refuse } from "../refusal/check.js";
import { item } from "../sequence/item.js";
import { largestRemainders } from "./largest-remainders.js";

/** Whole parts of a total counted in steps, none below the smallest; and the indexes of the shares that tied. */
export function sharedOut(
  refusedBy: string,
  shares: readonly number[],
  total: number,
  smallest: number,
  step: number,
): { readonly parts: readonly number[]; readonly tied: readonly number[] } {
  if (smallest * shares.length > total) {
    refuse(refusedBy, "does-not-fit", "smallest", {
      expected: `at most ${Math.floor(total / shares.length) * step}, for ${shares.length} shares of ${total * step}`,
      received: smallest * step,
      remedy: "Raise the total, leave a share out, or allow smaller parts.",
    });
  }
  const given = new Set<number>();
  for (;;) {
    const open = shares.map((_, index) => index).filter((index) => !given.has(index));
    const { parts, tied } = largestRemainders(shares, open, total - smallest * given.size);
    const low = open.filter((index) => item(parts, index) < smallest);
    if (low.length === 0) return { parts: parts.map((part, index) => (given.has(index) ? smallest : part)), tied };
    for (const index of low) given.add(index);
  }
}
