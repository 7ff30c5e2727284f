import { listOf, readInputs, whole } from "../../engine/formula/index.js";
import { refuse } from "../../engine/refusal.js";
import { dentOf } from "../reed/dent-of-end.js";

export interface CountsOfWarpInput {
  /** Every thread of the old warp, floating ones and those sharing a heddle among them. */
  readonly ends: number;
  /** Ends that share the heddle of a neighbour. */
  readonly sharingHeddle: number;
  /** Ends in no heddle, as floating selvedges are. */
  readonly floating: number;
  /** Broken or pulled out: heddle and dent stand empty, nothing is there to tie to. */
  readonly lost: number;
  /** The sleying order, over and over from end 1; 0 is an empty dent. */
  readonly endsInEachDent: readonly number[];
}

/** The four counts of a warp on the loom; doubled, floating and broken ends and crammed dents make them differ. */
export interface CountsOfWarp {
  readonly ends: number;
  readonly heddles: number;
  /** From the dent of end 1 to that of the last, empty ones among them. */
  readonly dents: number;
  readonly knots: number;
  readonly says: string;
}

/**
 * Ends, heddles, dents and knots of the old warp, each by itself.
 *
 * @param input the ends, those that are doubled, floating or lost, and the sleying order
 * @throws QuantityError "no-answer" where more ends are doubled, floating or lost than there are
 * @source common practice, no source
 * @example countsOfWarp({ ends: 384, sharingHeddle: 4, floating: 2, lost: 1, endsInEachDent: [2] }).heddles // 378
 */
export function countsOfWarp(input: CountsOfWarpInput): CountsOfWarp {
  const declared = {
    ends: whole("ends", "of the old warp, all of them", { atLeast: 1 }),
    sharingHeddle: whole("ends", "that share the heddle of a neighbour", { atLeast: 0 }),
    floating: whole("ends", "in no heddle", { atLeast: 0 }),
    lost: whole("ends", "broken or pulled out", { atLeast: 0 }),
    endsInEachDent: listOf(whole("ends in each dent", "of the sleying order", { atLeast: 0 })),
  };
  readInputs("countsOfWarp", declared, input);
  const { ends, sharingHeddle, floating, lost, endsInEachDent } = input;
  const heddles = ends - sharingHeddle - floating;
  const knots = ends - lost;
  const inOrder = endsInEachDent.reduce((total, held) => total + held, 0);
  if (heddles < 0 || knots < 0 || inOrder === 0) {
    const received = inOrder === 0 ? "only empty dents" : "more doubled, floating or lost ends than there are";
    refuse("no-answer", ["countsOfWarp"], "a warp that can stand so", received);
  }
  const [dents] = dentOf(ends, endsInEachDent, inOrder);
  const says = `${String(ends)} ends in ${String(heddles)} heddles and ${String(dents)} dents: ${String(knots)} knots to tie.`;
  return Object.freeze({ ends, heddles, dents, knots, says });
}
