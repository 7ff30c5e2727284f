import { calculation, drawnAs, loss, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { IndirectCount } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface SingleForFoldedInput {
  /** Of the finished thread. */
  readonly folded: IndirectCount;
  /** Folded together. */
  readonly plies: number;
  /** Of the length of the singles, from single to folded. */
  readonly contraction: Loss;
}

/**
 * Count of the single thread for a wanted folded count, where folding takes up part of the singles.
 *
 * @formula single = folded × plies ÷ (1 − contraction)
 * @units an indirect count; plies; a percentage lost → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source gate-textile
 * @example singleForFolded({ folded: cottonCount(16), plies: 2, contraction: percentLost(10) }).in(cottonCount) // 35.555…
 */
export const singleForFolded: Calculation<SingleForFoldedInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "singleForFolded",
  inputs: {
    folded: positive(IndirectCount, "of the finished thread"),
    plies: drawnAs(whole("plies", "folded together", { atLeast: 1 }), [2, 3, 4]),
    contraction: loss("of the length of the singles, from single to folded"),
  },
  formula: "single = folded × plies ÷ (1 − contraction)",
  result: positive(IndirectCount, "of the single thread"),
  resultIn: "folded",
  source: gateTextile,
}));
