import { added, calculation, drawnAs, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { IndirectCount } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface SingleForFoldedWithTakeUpInput {
  /** Of the finished thread. */
  readonly folded: IndirectCount;
  /** Folded together. */
  readonly plies: number;
  /** Of the length of the folded thread, to make its singles. */
  readonly contraction: Addition;
}

/**
 * Count of the single thread for a wanted folded count, where the twist take-up is told of the folded length.
 *
 * Where it is told of the length of the singles, `singleForFolded` is the formula.
 *
 * @formula single = folded × plies × (1 + contraction)
 * @units an indirect count; plies; a percentage added → an indirect count
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source gate-textile
 * @example singleForFoldedWithTakeUp({ folded: cottonCount(16), plies: 2, contraction: percentAdded(10) }).in(cottonCount) // 35.2
 */
export const singleForFoldedWithTakeUp: Calculation<SingleForFoldedWithTakeUpInput, IndirectCount> =
  /* @__PURE__ */ calculation(() => ({
    name: "singleForFoldedWithTakeUp",
    inputs: {
      folded: positive(IndirectCount, "of the finished thread"),
      plies: drawnAs(whole("plies", "folded together", { atLeast: 1 }), [2, 3, 4]),
      contraction: added("of the length of the folded thread, to make its singles"),
    },
    formula: "single = folded × plies × (1 + contraction)",
    result: positive(IndirectCount, "of the single thread"),
    resultIn: "folded",
    source: gateTextile,
  }));
