import { windingList } from "@thrum/stripes";
import type { Chain, WoundStripe } from "@thrum/stripes";
import type { Job } from "../job/job.js";

/** One chain as it is wound, begun at the near peg; its stripes are counted from its own first end. */
export interface WoundChain {
  readonly chain: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
  readonly ends: number;
  readonly stripes: readonly WoundStripe<string>[];
}

/** Winds one chain with so many threads together. */
export function woundChain(chain: Chain<string>, { threadsTogether, tieEvery }: Job["winding"]): WoundChain {
  const { number, firstEnd, lastEnd, sequence } = chain;
  const stripes = windingList({ sequence, threads: threadsTogether, tieEvery });
  return { chain: number, firstEnd, lastEnd, ends: sequence.ends, stripes };
}
