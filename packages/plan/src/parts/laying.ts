import { layingList, sequence } from "@thrum/stripes";
import type { JobJoin } from "../job/job.js";
import type { JobLoom } from "../job/loom.js";
import type { WarpChain } from "./chains.js";

export interface Seat {
  readonly endOneOn: NonNullable<JobLoom["endOneOn"]>;
  readonly knots: NonNullable<JobJoin["knots"]>;
  readonly faces: NonNullable<JobJoin["faces"]>;
}

/** A chain as it lies before the weaver, from her left to her right. */
export interface LaidChain {
  readonly place: number;
  readonly chain: number;
  readonly firstEndOn: "left" | "right";
  /** Its stripes in that order. */
  readonly stripes: readonly number[];
}

/** The way a weaver faces; behind the reed alone either may be chosen. */
export function facing(knots: Seat["knots"], faces: Seat["faces"] | null): Seat["faces"] | null {
  if (knots === "behind the reed") return faces;
  return knots === "in front of the reed" ? "back of the loom" : "front of the loom";
}

/** The chains as they are laid before the knots are tied; the way faced is the one that goes with the knots. */
export function layingOf(chains: readonly WarpChain[], { endOneOn, knots, faces }: Seat): readonly LaidChain[] {
  const wound = chains.map(({ chain, ends, parts }) => ({
    number: chain,
    firstEnd: parts[0]?.firstEnd ?? 1,
    lastEnd: (parts[0]?.firstEnd ?? 1) + ends - 1,
    sequence: sequence(parts.map((part) => ({ colour: part.stripe, ends: part.ends }))),
  }));
  return layingList({ chains: wound, endOneOn, knotsTied: knots, weaverFaces: faces }).map((laid) => ({
    place: laid.place,
    chain: laid.number,
    firstEndOn: laid.firstEndOn,
    stripes: laid.sequence.runs.map(({ colour }) => colour),
  }));
}
