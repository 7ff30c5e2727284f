import { madeSequence, stripe } from "../sequence/made-sequence.js";
import { item } from "../sequence/item.js";
import { refuseBrokenStep } from "./refuse-broken-step.js";
import type { FittedSequence, SequenceFromSharesInput } from "./sequence-from-shares.js";
import { sharedOut } from "./shared-out.js";

/** Stripes in whole steps from shares already checked. */
export function fittedShares<C>(refusedBy: string, input: SequenceFromSharesInput<C>): FittedSequence<C> {
  const { stripes, ends, step, smallest } = input;
  refuseBrokenStep(refusedBy, ends, step);
  const shares = stripes.map(({ share }) => share);
  const { parts, tied } = sharedOut(refusedBy, shares, ends / step, Math.ceil(smallest / step), step);
  const kept = stripes
    .map(({ colour }, index) => stripe(colour, item(parts, index) * step))
    .filter(({ ends: some }) => some > 0);
  const vanished = parts.flatMap((part, index) => (part === 0 ? [index + 1] : []));
  const sharesInAll = shares.reduce((sum, one) => sum + one, 0);
  return { sequence: madeSequence(refusedBy, kept), tied: tied.map((index) => index + 1), vanished, sharesInAll };
}
