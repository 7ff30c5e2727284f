import type { Addition, Length, PicksPerLength } from "@thrum/maths";
import type { Hand, Runs } from "./runs.js";

/** Shots of one yarn, or of several: in one shot, or shot by shot in turn. Neither picks nor length: all of the piece. */
export interface Shots extends Hand {
  readonly picks?: number | "the rest";
  readonly length?: Length;
  /** Its own, where they are not those of the piece. */
  readonly at?: PicksPerLength;
}

/** The weft of one piece, from its first pick to its last. */
export interface JobWeft {
  readonly stripes?: Runs<Shots>;
  /** Where the lengths of the stripes are measured. */
  readonly lengths?: "finished" | "at the loom";
  readonly allowance?: Addition;
  /** Lost at the two tails of every stripe, for each of its yarns. */
  readonly eachStripe?: Length;
}
