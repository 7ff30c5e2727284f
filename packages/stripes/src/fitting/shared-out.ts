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
    refuse(refusedBy, "does-not-fit", ["smallest"], {
      expected: `at most ${Math.floor(total / shares.length) * step}`,
      received: smallest * step,
      remedy: "Allow smaller parts, or leave a share out.",
    });
  }
  let open = shares.map((_, index) => index);
  for (;;) {
    const { parts, tied } = largestRemainders(shares, open, total - smallest * (shares.length - open.length));
    const enough = open.filter((index) => item(parts, index) >= smallest);
    if (enough.length === open.length) return { parts: parts.map((part) => Math.max(part, smallest)), tied };
    open = enough;
  }
}
