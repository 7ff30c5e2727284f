import { calculation, listOf, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { davis1920 } from "../../sources/index.js";
import { IndirectCount } from "../../units/index.js";

export interface PartnerCountInput {
  /** Of the folded thread. */
  readonly wanted: IndirectCount;
  /** Each thread that is there. */
  readonly counts: readonly IndirectCount[];
}

/**
 * Count of the thread to fold with others so that a wanted count comes out.
 *
 * @formula partner = 1 ÷ (1 ÷ wanted − Σ(1 ÷ counts))
 * @units an indirect count; a list, each an indirect count → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source davis-1920
 * @example partnerCount({ wanted: cottonCount(21), counts: [cottonCount(30)] }).in(cottonCount) // 70
 */
export const partnerCount: Calculation<PartnerCountInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "partnerCount",
  inputs: {
    wanted: positive(IndirectCount, "of the folded thread"),
    counts: listOf(positive(IndirectCount, "each thread that is there")),
  },
  formula: "partner = 1 ÷ (1 ÷ wanted − Σ(1 ÷ counts))",
  result: positive(IndirectCount, "of the thread to find"),
  resultIn: "wanted",
  source: davis1920,
}));
