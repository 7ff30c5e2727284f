import type { Length, Loss } from "@thrum/maths";

/** A loss as written: a percentage of what was there before, or the two measures of one piece. */
export interface WrittenLoss {
  readonly lost?: Loss;
  readonly before?: Length;
  readonly after?: Length;
}
