import type { Length } from "@thrum/maths";
import type { Runs } from "./runs.js";
import type { Stripe } from "./stripes.js";
import type { YarnCount } from "./yarns.js";

interface Mendable {
  /** Whether it is put right; what is done otherwise depends on the fault. */
  readonly mend?: boolean;
}

/** Threads missing from their heddles. */
export interface Broken extends Mendable {
  readonly is: "broken";
  readonly after: number;
  readonly ends?: number;
  /** Where it should hang, to hold against the threading. */
  readonly shaft?: number;
}

/** A thread that shares the heddle of the end before. */
export interface OneTooMany {
  readonly is: "one too many";
  readonly end: number;
}

/** The threading jumps, and the dent has no room. */
export interface LeftOut extends Mendable {
  readonly is: "left out";
  readonly after: number;
  readonly shaft?: number;
}

/** A heddle that hangs there with nothing in it. */
export interface EmptyHeddle {
  readonly is: "empty heddle";
  readonly after: number;
  readonly shaft: number;
}

export interface OnAnotherShaft extends Mendable {
  readonly is: "on another shaft";
  readonly end: number;
  readonly shaft: number;
}

export interface InAnotherDent extends Mendable {
  readonly is: "in another dent";
  readonly end: number;
  readonly dent: number;
}

/** What was found in the old warp; its ends are numbered as counted, threads that are there. */
export type WarpFault = Broken | OneTooMany | LeftOut | EmptyHeddle | OnAnotherShaft | InAnotherDent;

/** The threads in the loom. */
export interface OldWarp {
  /** Threads that are there. */
  readonly ends?: number;
  /** Of its threads. */
  readonly yarn?: readonly YarnCount[];
  /** Its colours by place; the names need no entry among the yarns. */
  readonly stripes?: Runs<Stripe>;
  readonly faults?: readonly WarpFault[];
  /** What will stand there after the cut. */
  readonly left?: { readonly pastReed?: Length; readonly behindHeddles?: Length };
}

/** The old warp, or none: threaded afresh. As data a group with a key for each shape. */
export interface JobOldWarp extends OldWarp {
  readonly none?: true;
}
