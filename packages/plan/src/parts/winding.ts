import { sequence, windingList } from "@thrum/stripes";
import type { ChainPart, WarpChain } from "./chains.js";
import type { Group } from "./groups.js";

/** A counting tie at the end of a group: the same place that is counted when its knots are tied. */
export interface CountingTie {
  readonly group: number;
  /** Ends of the chain so far, and of the stripe. */
  readonly total: number;
  readonly endOfStripe: number;
  readonly pass: number;
}

/** One stripe of a chain as it is wound, begun at the near peg. */
export interface WoundPart extends ChainPart {
  /** Held together. */
  readonly threads: number;
  /** A blend wound by its own hand, for the threads held otherwise are no multiple of it. */
  readonly byItsHand: boolean;
  /** Ways from one end peg to the other, the last one perhaps with fewer threads. */
  readonly passes: number;
  /** Whole ways there and back; one more pass is a half round. */
  readonly rounds: number;
  readonly halfRound: boolean;
  readonly endsAt: "near peg" | "far peg";
  /** Threads to lay aside for the last pass. */
  readonly dropForLastPass: number;
  /** Ends of the chain wound so far, this stripe included. */
  readonly runningTotal: number;
  readonly ties: readonly CountingTie[];
}

export interface WoundChain {
  readonly chain: number;
  readonly ends: number;
  readonly passes: number;
  readonly parts: readonly WoundPart[];
}

/** Threads in the hand: a blend's hand so often as they are a multiple of it, else the hand once. */
export function threadsHeld(hand: number, threads: number): number {
  return threads % hand === 0 ? threads : hand;
}

/** A chain as it is wound with so many threads together, its counting ties at the ends of the groups. */
export function woundChain({ chain, ends, parts }: WarpChain, groups: readonly Group[], threads: number): WoundChain {
  const tied: { readonly group: number; readonly total: number }[] = [];
  let before = 0;
  for (const { firstEnd, lastEnd, ends: ofPart } of parts) {
    for (const { group, lastEnd: edge } of groups) {
      if (edge > lastEnd) break;
      if (edge >= firstEnd) tied.push({ group, total: before + edge - firstEnd + 1 });
    }
    before += ofPart;
  }
  const held = parts.map(({ yarns }) => threadsHeld(yarns.length, threads));
  const rows = windingList({
    sequence: sequence(parts.map((part, at) => ({ colour: at, ends: part.ends }))),
    threads: held,
    tieEvery: tied.map(({ total }) => total),
  });
  const groupAt = new Map(tied.map(({ group, total }) => [total, group]));
  const wound = rows.map(({ stripe, passes, rounds, endsAt, dropForLastPass, runningTotal, ties }): WoundPart[] => {
    const part = parts[stripe - 1];
    if (part === undefined) return [];
    const inHand = held[stripe - 1] ?? threads;
    return [
      {
        ...part,
        threads: inHand,
        byItsHand: inHand !== threads,
        passes,
        rounds,
        halfRound: passes % 2 === 1,
        endsAt,
        dropForLastPass,
        runningTotal,
        ties: ties.map((tie) => ({ group: groupAt.get(tie.total) ?? 0, ...tie })),
      },
    ];
  });
  return { chain, ends, passes: rows.reduce((sum, row) => sum + row.passes, 0), parts: wound.flat() };
}
