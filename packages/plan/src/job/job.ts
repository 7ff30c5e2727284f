import type { Addition, DentsPerLength, EndsPerLength, Length, Loss, Mass, Money, PicksPerLength } from "@thrum/maths";
import type { JobLoom, Threaded } from "./loom.js";
import type { WrittenLoss } from "./loss.js";
import type { JobOldWarp } from "./old-warp.js";
import type { BetweenPieces, JobPiece } from "./pieces.js";
import type { Runs } from "./runs.js";
import type { Stripe } from "./stripes.js";
import type { JobWeft } from "./weft.js";
import type { JobYarn } from "./yarns.js";

/** Ends added or dropped at the two sides. */
export interface JobSides {
  readonly where?: "both" | "before end 1" | "after the last";
  /** More than nothing is added, less is dropped. */
  readonly numbers?: { readonly before: number; readonly after: number };
}

/** What the hands do. */
export interface JobJoin {
  readonly knots?: "in front of the reed" | "behind the reed" | "behind the heddles";
  readonly knot?: "overhand of both ends" | "overhand of one end" | "square" | "weaver's";
  readonly faces?: "back of the loom" | "front of the loom";
  readonly sides?: JobSides;
  /** How a new end without an old one is held. */
  readonly partner?: "hang a thrum" | "thread it itself";
  readonly order?: "from end 1" | "from the last end" | "one colour at a time";
  /** Knots an hour, counted on a first hundred. */
  readonly perHour?: number;
}

/** What the cloth is wanted to be, and what it loses. */
export interface JobCloth {
  readonly sett?: EndsPerLength;
  readonly threading?: Runs<Threaded>;
  readonly finishedWidth?: Length;
  /** At weaving tension. */
  readonly picks?: PicksPerLength;
  /** Thread, from wound to weaving tension. */
  readonly takeUp?: WrittenLoss;
  /** Cloth, from weaving tension to finished. */
  readonly lengthLoomToFinished?: WrittenLoss;
  readonly widthReedToFinished?: WrittenLoss;
}

export interface JobWarp {
  /** Fixed beforehand. */
  readonly length?: Length;
  readonly wasteInFront?: Length;
  readonly wasteBehind?: Length;
}

/** Ends wound beside the warp, never tied. */
export interface BesideTheWarp {
  readonly ends: number;
  readonly yarn: string;
}

export interface JobWinding {
  readonly threads?: number;
  readonly chains?: "by stripe" | "by group" | "by colour" | { readonly every: number };
  /** Of one chain. */
  readonly most?: { readonly ends: number } | { readonly mass: Mass };
  /** Once round the reel with the yarn on. */
  readonly turn?: Length;
  /** From peg to peg. */
  readonly step?: Length;
  /** Teeth of the raddle. */
  readonly raddle?: DentsPerLength;
  readonly extra?: readonly BesideTheWarp[];
}

/** What was measured. */
export interface JobFound {
  readonly firstInches?: { readonly picks?: PicksPerLength; readonly width?: Length };
  /** Between two threads tied to the warp: before, and once woven. */
  readonly takeUp?: { readonly before?: Length; readonly after?: Length };
  readonly length?: { readonly onLoom?: Length; readonly offLoom?: Length; readonly finished?: Length };
  readonly width?: {
    readonly inReed?: Length;
    readonly atFell?: Length;
    readonly offLoom?: Length;
    readonly finished?: Length;
  };
  /** From the fell to the knots; tied behind the heddles, to the back rod. */
  readonly warpLeft?: Length;
  readonly waste?: { readonly inFront?: Length; readonly behind?: Length };
  readonly knotsPerHour?: number;
}

export interface JobCosts {
  readonly hours?: number;
  readonly hourlyRate?: Money;
  readonly others?: Money;
  /** Of the price. */
  readonly commission?: Loss;
}

/** A warp as it stands on the loom. Every key may be left out: what is not given is not reckoned. */
export interface Job {
  /** The form. */
  readonly thrum?: 1;
  readonly title?: string;
  readonly note?: string;
  /** The new warp, from end 1. */
  readonly stripes?: Runs<Stripe>;
  /** Ends counted, wound, tied and ticked together. */
  readonly groups?: number;
  readonly yarns?: Readonly<Record<string, JobYarn>>;
  readonly loom?: JobLoom;
  readonly oldWarp?: JobOldWarp;
  readonly join?: JobJoin;
  readonly cloth?: JobCloth;
  readonly warp?: JobWarp;
  /** In the order of weaving. */
  readonly pieces?: readonly JobPiece[];
  readonly betweenPieces?: BetweenPieces;
  readonly weft?: JobWeft;
  readonly winding?: JobWinding;
  readonly found?: JobFound;
  readonly costs?: JobCosts;
  readonly label?: { readonly regain?: Readonly<Record<string, Addition>> };
}
