import type { Hand } from "./runs.js";

/** Ends of one yarn, or of a blend; `"the rest"` fills the room that the others leave. */
export interface Stripe extends Hand {
  readonly ends: number | "the rest";
}
