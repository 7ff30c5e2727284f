import type { Length, Loss, Mass } from "@thrum/maths";

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

/** What a job file holds, as read: lengths, masses and percentages are quantities. Nothing in it is assumed. */
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
  };
  /** As it stands, counted on the loom. */
  readonly oldWarp: {
    readonly ends: number;
    readonly reed: { readonly dents: number; readonly in: "1 inch" | "10 centimetres" };
    readonly endsPerDent: number;
    /** The shafts of one threading repeat. */
    readonly threading: readonly number[];
    readonly yarn: JobYarn;
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
  /** By the name the stripes call them. */
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
}
