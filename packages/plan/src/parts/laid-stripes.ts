import type { Hand } from "../job/runs.js";
import type { Stripe } from "../job/stripes.js";
import type { RunKind } from "./laid.js";

/** A stripe of the warp as it lies. */
export interface LaidStripe extends Hand {
  readonly ends: number;
  /** From end 1. */
  readonly firstEnd: number;
  readonly lastEnd: number;
}

/** A hand as it is held: a hand in no order lists its yarns as they were first written. */
export function handOf({ yarns, order }: Hand): Hand {
  return order === undefined ? { yarns } : { yarns, order };
}

/** One hand or another: of several yarns in no order either may come first. */
export function isSameHand(one: Hand, other: Hand): boolean {
  if (one.order !== other.order || one.yarns.length !== other.yarns.length) return false;
  if (one.yarns.length === 1) return one.yarns[0] === other.yarns[0];
  const sorted = ({ yarns, order }: Hand): readonly string[] => (order === undefined ? inOrder(yarns) : yarns);
  const [these, those] = [sorted(one), sorted(other)];
  return these.every((yarn, at) => yarn === those[at]);
}

function inOrder(yarns: readonly string[]): readonly string[] {
  return [...yarns].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
}

/** A hand strictly in turn, the other way round. */
function turnedHand(hand: Hand): Hand {
  return hand.order === undefined ? handOf(hand) : { yarns: [...hand.yarns].reverse(), order: hand.order };
}

/** The warp in ends; an open stripe grows by whole hands. */
export const STRIPES: RunKind<Stripe, LaidStripe> = {
  counted: "ends",
  isOpen: ({ ends }) => ends === "the rest",
  closed: (stripe, open) => {
    const ends = stripe.ends === "the rest" ? open * stripe.yarns.length : stripe.ends;
    return { ...handOf(stripe), ends, firstEnd: 0, lastEnd: 0 };
  },
  size: ({ ends }) => ends,
  isNothing: ({ ends }) => ends === 0,
  turned: (stripe) => ({ ...stripe, ...turnedHand(stripe) }),
  together: (one, other) => {
    const ends = one.ends + other.ends;
    return isSameHand(one, other) ? { ...one, ends, lastEnd: one.firstEnd + ends - 1 } : null;
  },
  placed: (stripe, before) => ({ ...stripe, firstEnd: before + 1, lastEnd: before + stripe.ends }),
};
