import type { Addition, Knot, Length, Loss, Mass, Money } from "@thrum/maths";
import type { JobColoursSeen, JobExtraEnds } from "./beside-the-warp.js";

/** A yarn by its label. */
export interface JobYarn {
  readonly count: number;
  readonly system: "tex" | "denier" | "cotton" | "worsted" | "linen" | "metric";
  readonly plies: number;
  readonly counted: "single" | "finished thread";
}

/** A yarn of the new warp. */
export interface JobWarpYarn extends JobYarn {
  readonly onHand: Mass;
  /** Yarn on one package as it is sold. */
  readonly package: Mass;
}

/** Stripes as written: one stripe, a group several times over, or a group that turns back. */
export type StripesItem =
  | { readonly colour: string; readonly ends: number }
  | { readonly repeat: number; readonly of: readonly StripesItem[] }
  | { readonly mirror: readonly StripesItem[]; readonly middleStripe: "once" | "twice" };

/** Picks to so much of cloth. */
export interface JobPicks {
  readonly picks: number;
  readonly in: "1 inch" | "1 centimetre";
}

/** What was found on the first inches of cloth, at weaving tension. */
export interface JobFirstInches {
  readonly picksAtLoom: JobPicks;
  readonly widthAtFell: Length;
}

/** One piece measured from the loom to the press; what it gave is ready for the next job. */
export interface JobFound {
  /** Of the warp, taken up by `length.onLoom` of cloth. */
  readonly warpUsed: Length;
  readonly length: { readonly onLoom: Length; readonly offLoom: Length; readonly finished: Length };
  readonly width: {
    readonly inReed: Length;
    readonly atFell: Length;
    readonly offLoom: Length;
    readonly finished: Length;
  };
}

/** What the whole run costs. */
export interface JobCosts {
  /** Of one package of each yarn, by its name. */
  readonly packagePrices: Readonly<Record<string, Money>>;
  /** Of all the work: winding, joining, weaving, washing, hemming. */
  readonly hours: number;
  readonly hourlyRate: Money;
  /** Overhead, labels, washing. */
  readonly others: Money;
  /** Of the price, kept by whoever sells the pieces. */
  readonly commission: Loss;
}

/** A fibre of the cloth and the yarns spun from it alone. */
export interface JobFibre {
  /** Agreed by the rule that the label follows. */
  readonly regain: Addition;
  readonly yarns: readonly string[];
}

/**
 * What a job file holds, as read: lengths, masses and percentages are quantities. Nothing in it is assumed:
 * a part that may be left out is left out of the plan.
 */
export interface Job {
  /** The version of the form. */
  readonly thrum: 1;
  readonly title: string;
  readonly note: string;
  readonly loom: {
    readonly knotsTied: "in front of the reed" | "behind the reed" | "behind the heddles";
    readonly weaverFaces: "back of the loom" | "front of the loom";
    /** Seen from the front of the loom. */
    readonly endOneOn: "left" | "right";
    readonly knot: Knot;
  };
  /** As it stands, counted on the loom. */
  readonly oldWarp: {
    readonly ends: number;
    readonly reed: { readonly dents: number; readonly in: "1 inch" | "10 centimetres" };
    readonly endsPerDent: number;
    /** The shafts of one threading repeat. */
    readonly threading: readonly number[];
    readonly yarn: JobYarn;
    /** Free between two wires of the reed. */
    readonly gapInDent: Length | "not measured";
    /** Of the reed, outside the warp. */
    readonly emptyDents: { readonly beforeFirst: number; readonly afterLast: number };
    /** For each shaft from shaft 1, those that hang outside the outermost threaded end. */
    readonly spareHeddles: { readonly beforeFirst: readonly number[]; readonly afterLast: readonly number[] };
  };
  readonly newWarp: {
    readonly sett: { readonly ends: number; readonly in: "1 inch" | "1 centimetre" };
    /** The shafts of the threading repeat it counts on. */
    readonly threading: readonly number[];
    /** Of the thread, from wound to weaving tension. */
    readonly takeUp: Loss;
    readonly wasteInFront: Length;
    readonly wasteBehind: Length;
  };
  readonly pieces: {
    readonly number: number;
    readonly finishedLength: Length;
    readonly hemEachEnd: Length;
    /** Of the cloth's length, from weaving tension to finished. */
    readonly loomToFinished: Loss;
    /** Of the width, from the reed to finished. */
    readonly widthReedToFinished: Loss;
  };
  readonly weft: {
    /** One of the yarns. */
    readonly yarn: string;
    /** Counted on the cloth at weaving tension. */
    readonly picksAtLoom: JobPicks;
  };
  /** By the name the stripes and the weft call them. */
  readonly yarns: Readonly<Record<string, JobWarpYarn>>;
  readonly stripes: readonly StripesItem[];
  readonly winding: {
    readonly threadsTogether: number;
    /** A counting tie after every so many ends. */
    readonly tieEvery: number;
    readonly mostEndsInChain: number;
    /** Where one chain may end and the next begin: at a stripe's edge, or after every so many ends. */
    readonly chainsEndAt: "stripe edges" | number;
  };
  readonly extraEnds?: JobExtraEnds;
  readonly coloursSeen?: JobColoursSeen;
  readonly firstInches?: JobFirstInches;
  /** Of the new warp, measured on the loom from the fell to its end. */
  readonly warpLeft?: Length;
  readonly found?: JobFound;
  readonly costs?: JobCosts;
  /** By the name of each fibre. */
  readonly fibres?: Readonly<Record<string, JobFibre>>;
}
