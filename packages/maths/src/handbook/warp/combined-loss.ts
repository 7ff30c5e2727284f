import { calculation, loss } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { weftHanded2010 } from "../../sources/index.js";
import { percentLost } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface CombinedLossInput {
  /** Of what there was at the beginning. */
  readonly first: Loss;
  /** Of what the first has left. */
  readonly second: Loss;
}

/**
 * One loss for two that follow each other, the second taken of what the first has left.
 *
 * @formula
 * ```text
 * left = (1 − first) × (1 − second)
 * loss = 1 − left
 * ```
 * @units a percentage lost → a percentage lost
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source weft-handed-2010
 * @example combinedLoss({ first: percentLost(20), second: percentLost(20) }).in(percentLost) // 36
 */
export const combinedLoss: Calculation<CombinedLossInput, Loss> = /* @__PURE__ */ calculation(() => ({
  name: "combinedLoss",
  inputs: {
    first: loss("of what there was at the beginning"),
    second: loss("of what the first has left"),
  },
  formula: `
    left = (1 − first) × (1 − second)
    loss = 1 − left`,
  result: loss("of what there was at the beginning"),
  resultIn: [percentLost],
  source: weftHanded2010,
}));
