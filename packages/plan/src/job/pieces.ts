import type { Length, PicksPerLength } from "@thrum/maths";
import type { JobWeft } from "./weft.js";
import type { Hand } from "./runs.js";
import type { WrittenLoss } from "./loss.js";

/** A number of pieces left open. */
export type OpenNumber = "as many as the warp gives" | "as many as the yarn gives";

/** One entry of the order, in the order of weaving: so many pieces, or a length woven that is no piece. */
export interface JobPiece {
  readonly number?: number | OpenNumber;
  readonly name?: string;
  readonly finishedLength?: Length;
  readonly hemEachEnd?: Length;
  /** Warp left unwoven at each end. */
  readonly fringeEachEnd?: Length;
  /** Its length before and after it is twisted. */
  readonly fringeTwist?: WrittenLoss;
  /** Woven so long and no piece: a header, a sample. */
  readonly atLoom?: Length;
  readonly weft?: JobWeft;
  readonly picks?: PicksPerLength;
}

/** Woven between two entries of the run and cut away: a length or picks. */
export interface BetweenPieces {
  readonly length?: Length;
  readonly picks?: number;
  readonly weft?: Hand;
}
