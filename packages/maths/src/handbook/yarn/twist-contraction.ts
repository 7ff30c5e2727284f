import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { textileNotes } from "../../sources/index.js";
import { IndirectCount, percentLost } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface TwistContractionInput {
  /** Of the singles folded, nothing taken up. */
  readonly nominal: IndirectCount;
  /** Of the finished thread. */
  readonly measured: IndirectCount;
}

/**
 * Twist contraction, from the count worked out for a folded yarn and the count found by weighing it.
 *
 * @formula contraction = 1 − measured ÷ nominal
 * @units an indirect count → a percentage lost
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source textile-notes
 * @example twistContraction({ nominal: cottonCount("1.6"), measured: cottonCount("1.4") }).in(percentLost) // 12.5
 */
export const twistContraction: Calculation<TwistContractionInput, Loss> = /* @__PURE__ */ calculation(() => ({
  name: "twistContraction",
  inputs: {
    nominal: positive(IndirectCount, "of the singles folded, nothing taken up"),
    measured: positive(IndirectCount, "of the finished thread"),
  },
  formula: "contraction = 1 − measured ÷ nominal",
  result: loss("of the length of the singles, from single to folded"),
  resultIn: [percentLost],
  source: textileNotes,
}));
