import type { DentsPerLength, Length } from "@thrum/maths";
import type { Runs } from "./runs.js";

/** One end on a shaft; several ends in one heddle; an end in no heddle. */
export type Threaded = number | { readonly ends: number; readonly shaft: number } | "floating";

/** Ends of one dent; a stretch by its dents, or by its ends; dents left empty. */
export type Sleyed =
  | number
  | { readonly dents: number; readonly at: number }
  | { readonly ends: number; readonly at: number }
  | { readonly empty: number };

/** Ends in the dents, by place or by yarn; by yarn every stripe begins a new dent. */
export interface Sley {
  readonly places?: Runs<Sleyed>;
  /** Ends in a dent by the name of the yarn; `others` for those not named. */
  readonly byYarn?: Readonly<Record<string, number>>;
}

/** Still empty outside the outermost end. */
export interface Room {
  readonly dents?: number;
  readonly heddles?: SpareHeddles;
}

/** One number is so many on each shaft; else a number for each shaft, from shaft 1. */
export type SpareHeddles = number | readonly number[];

/** The eye of a heddle, measured. */
export interface HeddleEye {
  readonly wide: Length;
  readonly high: Length;
  readonly of: "metal" | "cord";
}

/** The wood as it stands. */
export interface JobLoom {
  readonly reed?: DentsPerLength;
  readonly sley?: Sley;
  /** Shafts as drawn in, old places only; threaded afresh, as they will be. */
  readonly threading?: Runs<Threaded>;
  readonly room?: { readonly before?: Room; readonly after?: Room };
  /** Free between two wires of the reed. */
  readonly gapInDent?: Length | "not measured";
  readonly heddleEye?: HeddleEye;
  /** Seen from the front of the loom. */
  readonly endOneOn?: "left" | "right";
}
