import { calculation, positive, proportionOf } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { alessandrinaCounts } from "../../sources/index.js";
import { IndirectCount, percentOf } from "../../units/index.js";
import type { Share } from "../../units/index.js";

export interface YieldOfNominalInput {
  /** As the label or the balance has it. */
  readonly measured: IndirectCount;
  /** As its number and plies work out. */
  readonly nominal: IndirectCount;
}

/**
 * Yield of a yarn as its label or a balance has it, beside the yield its count promises; by which the nominal sum falls short.
 *
 * @formula yield = measured ÷ nominal
 * @units an indirect count → a share in percent
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source alessandrina-counts
 * @example yieldOfNominal({ measured: yardsPerPound(787), nominal: cottonCount(1) }).in(percentOf) // 93.69…
 */
export const yieldOfNominal: Calculation<YieldOfNominalInput, Share> = /* @__PURE__ */ calculation(() => ({
  name: "yieldOfNominal",
  inputs: {
    measured: positive(IndirectCount, "as the label or the balance has it"),
    nominal: positive(IndirectCount, "as its number and plies work out"),
  },
  formula: "yield = measured ÷ nominal",
  result: proportionOf("of the nominal yield"),
  resultIn: [percentOf],
  source: alessandrinaCounts,
}));
