import { sequenceOf, type Stripe } from "./sequence.js";

/**
 * The stripes one sees: equal neighbours run together.
 *
 * @throws StripeError for an empty list or a faulty stripe
 * @example merge([{ colour: "ash", ends: 6 }, { colour: "ash", ends: 8 }]) // [{ colour: "ash", ends: 14 }]
 */
export function merge<C>(stripes: readonly Stripe<C>[]): readonly Stripe<C>[] {
  return sequenceOf("merge", stripes).runs;
}
