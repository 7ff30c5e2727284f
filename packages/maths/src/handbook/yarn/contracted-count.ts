import { calculation, drawnAs, loss, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { IndirectCount } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface ContractedCountInput {
  /** Of the single thread. */
  readonly count: IndirectCount;
  /** Folded together. */
  readonly plies: number;
  /** Of the length of the singles, from single to folded. */
  readonly contraction: Loss;
}

/**
 * Count of a yarn folded from equal singles, where twisting takes up part of the length of the singles.
 *
 * @formula folded = count ÷ plies × (1 − contraction)
 * @units an indirect count; plies; a percentage lost → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source gate-textile
 * @example contractedCount({ count: cottonCount(5), plies: 2, contraction: percentLost(5) }).in(yardsPerPound) // 1995
 */
export const contractedCount: Calculation<ContractedCountInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "contractedCount",
  inputs: {
    count: positive(IndirectCount, "of the single thread"),
    plies: drawnAs(whole("plies", "folded together", { atLeast: 1 }), [2, 3, 4]),
    contraction: loss("of the length of the singles, from single to folded"),
  },
  formula: "folded = count ÷ plies × (1 − contraction)",
  result: positive(IndirectCount, "of the finished thread"),
  resultIn: "count",
  source: gateTextile,
}));
