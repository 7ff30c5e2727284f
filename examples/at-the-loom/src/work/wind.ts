import { isTicked, tickedOff } from "@thrum/plan";
import type { Progress } from "@thrum/plan";
import { loom as words } from "../words/loom.js";
import type { Change } from "./act.js";
import type { WoundChain } from "./loom.js";

type Part = WoundChain["parts"][number];

/** Where the winding stands. */
export interface Winding {
  readonly chain: WoundChain;
  readonly part: Part;
  /** From 1, in its chain. */
  readonly stripe: number;
  readonly pass: number;
  readonly isFull: boolean;
  /** Ends of this chain on the pegs. */
  readonly ends: number;
  readonly next: Part | null;
  /** A counting tie that is due now. */
  readonly tie: Part["ties"][number] | null;
}

/** Ends on the pegs after so many passes of a stripe: the last pass may hold fewer. */
const endsAfter = (part: Part, pass: number): number => Math.min(part.ends, pass * part.threads);

/** The chain, stripe and pass in work; null where all is wound. */
export function windingNow(progress: Progress, chains: readonly WoundChain[]): Winding | null {
  const { winding, wound } = progress;
  const chain = chains.find((one) => one.chain === winding?.chain) ?? chains.find((one) => !isTicked(wound, one.chain));
  if (chain === undefined) return null;
  const isIn = winding?.chain === chain.chain;
  const stripe = isIn ? winding.stripe : 1;
  const part = chain.parts[stripe - 1] ?? chain.parts[0];
  if (part === undefined) return null;
  const pass = isIn ? Math.min(winding.pass, part.passes) : 0;
  const tie =
    part.ties.find((one) => one.pass === pass || (one.pass === pass - 1 && pass % 2 === 0 && pass > 1)) ?? null;
  const ends = part.runningTotal - part.ends + endsAfter(part, pass);
  return { chain, part, stripe, pass, isFull: pass >= part.passes, ends, next: chain.parts[stripe] ?? null, tie };
}

/** One more round; half a round where one pass is left; the next colour, or the next chain, where the stripe is full. */
export function wound(progress: Progress, at: Winding): Change {
  const { chain, part, stripe, pass, isFull, next } = at;
  if (!isFull) {
    const now = Math.min(part.passes, pass + 2);
    const isLast = now === part.passes;
    return {
      progress: { winding: { chain: chain.chain, stripe, pass: now } },
      says: words.roundsSaid(now, part.passes),
      clicks: isLast ? 2 : 1,
    };
  }
  if (next !== null) {
    return {
      progress: { winding: { chain: chain.chain, stripe: stripe + 1, pass: 0 } },
      says: words.yarnIsOn(words.hand(next)),
      clicks: 1,
    };
  }
  return {
    progress: { wound: tickedOff(progress.wound, chain.chain), winding: undefined },
    says: words.chainDone(chain.chain),
    clicks: 2,
  };
}
