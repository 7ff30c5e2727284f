import { atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface WeftOfStripesInput {
  /** Of this yarn in the piece, two of them where it lies double. */
  readonly picks: number;
  /** Not that of the cloth, which is narrower. */
  readonly widthInReed: Length;
  /** Of the piece that have this yarn. */
  readonly stripes: number;
  /** Lost at the two tails of a stripe. */
  readonly eachStripe: Length;
}

/**
 * Weft of one yarn in a piece woven in stripes: its whole picks, laid straight, and what is lost at the two tails of each stripe.
 *
 * @formula weft = picks × widthInReed + stripes × eachStripe
 * @units picks; a length; stripes → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example weftOfStripes({ picks: 108, widthInReed: inches(45), stripes: 6, eachStripe: inches(6) }).in(inches) // 4896
 */
export const weftOfStripes: Calculation<WeftOfStripesInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "weftOfStripes",
  inputs: {
    picks: whole("picks", "of this yarn in the piece, two of them where it lies double", { atLeast: 0 }),
    widthInReed: positive(Length, "not that of the cloth, which is narrower"),
    stripes: whole("stripes", "of the piece that have this yarn", { atLeast: 0 }),
    eachStripe: atLeastZero(Length, "lost at the two tails of a stripe"),
  },
  formula: "weft = picks × widthInReed + stripes × eachStripe",
  result: atLeastZero(Length, "of this yarn in one piece"),
  source: commonPractice,
}));
