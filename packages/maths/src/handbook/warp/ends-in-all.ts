import { calculation, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";

export interface EndsInAllInput {
  /** Of the cloth. */
  readonly ends: number;
  /** Wound beside them, for repairs and samples, and never tied. */
  readonly beside: number;
}

/**
 * Ends to wind: those of the cloth, and those wound beside it and never tied.
 *
 * @formula inAll = ends + beside
 * @units ends → ends
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example endsInAll({ ends: 368, beside: 3 }) // 371
 */
export const endsInAll: Calculation<EndsInAllInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsInAll",
  inputs: {
    ends: whole("ends", "of the cloth", { atLeast: 0 }),
    beside: whole("ends", "wound beside them, for repairs and samples, and never tied", { atLeast: 0 }),
  },
  formula: "inAll = ends + beside",
  result: whole("ends", "to wind", { atLeast: 0 }),
  source: commonPractice,
}));
