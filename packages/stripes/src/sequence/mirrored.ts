import { item } from "./item.js";
import { sameStripe } from "./same-stripe.js";
import type { Stripe } from "./sequence.js";

/** Whether the stripes from one index up to another, itself left out, read the same from both sides. */
export function mirrored(stripes: readonly Stripe<unknown>[], from: number, to: number): boolean {
  for (let left = from, right = to - 1; left < right; left++, right--) {
    if (!sameStripe(item(stripes, left), item(stripes, right))) return false;
  }
  return true;
}
