import { calculation, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wovenCalculation } from "../../sources/index.js";

export interface TexCoverFactorInput {
  /** Ends or picks. */
  readonly threadsPerCentimetre: number;
  /** Of their yarn. */
  readonly tex: number;
}

/**
 * Cover factor on the tex scale; a twentieth less than on the scale of Peirce, so the two are never mixed.
 *
 * @formula coverFactor = threadsPerCentimetre × √tex ÷ 10
 * @units threads per centimetre; tex → on the tex scale
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source woven-fabric-calculation
 * @example texCoverFactor({ threadsPerCentimetre: 20, tex: 36 }) // 12
 */
export const texCoverFactor: Calculation<TexCoverFactorInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "texCoverFactor",
  inputs: {
    threadsPerCentimetre: plainNumber("threads per centimetre", "ends or picks"),
    tex: plainNumber("tex", "of their yarn"),
  },
  formula: "coverFactor = threadsPerCentimetre × √tex ÷ 10",
  result: plainNumber("on the tex scale", "of one set of threads"),
  source: wovenCalculation,
}));
