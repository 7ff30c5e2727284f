import { sameColour } from "./same-colour.js";
import type { Stripe } from "./sequence.js";

export function sameStripe(one: Stripe<unknown>, other: Stripe<unknown>): boolean {
  return one.ends === other.ends && sameColour(one.colour, other.colour);
}
