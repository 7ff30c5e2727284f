import { check } from "../refusal/check.js";
import { anyColour, fields, listOf, whole } from "../refusal/kinds.js";
import { madeSequence, stripe } from "./made-sequence.js";

/** Neighbouring ends of one colour. */
export interface Stripe<C> {
  /** Any value but undefined: a name, a yarn, a number on a card. One value for one yarn. */
  readonly colour: C;
  readonly ends: number;
}

/** The order of the colours across a warp; ends are numbered from 1. */
export interface Sequence<C> {
  /** The stripes one sees: no two neighbours of one colour. */
  readonly runs: readonly Stripe<C>[];
  /** Number of the first end of every run. */
  readonly starts: readonly number[];
  /** Ends in all. */
  readonly ends: number;
  /** The stripes as they were written, neighbours of one colour still apart. */
  readonly written: readonly Stripe<C>[];
}

/**
 * The sequence of the stripes given, in their order.
 *
 * @throws StripeError for an empty list, or a stripe without a colour or a whole number of ends
 * @example sequence([{ colour: "linen", ends: 12 }, { colour: "madder", ends: 4 }]).ends // 16
 */
export function sequence<C>(stripes: readonly Stripe<C>[]): Sequence<C> {
  return sequenceOf("sequence", stripes);
}

/** The same for another function, which is named where it is refused. */
export function sequenceOf<C>(refusedBy: string, stripes: readonly Stripe<C>[]): Sequence<C> {
  check(refusedBy, { stripes }, { stripes: listOf(1, fields({ colour: anyColour, ends: whole(1) })) });
  return madeSequence(
    refusedBy,
    stripes.map(({ colour, ends }) => stripe(colour, ends)),
  );
}
