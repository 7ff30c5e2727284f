import { calculation, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wovenCalculation } from "../../sources/index.js";

export interface CoverFactorByPeirceInput {
  /** Ends or picks. */
  readonly threadsPerInch: number;
  /** Of their yarn. */
  readonly cottonCount: number;
}

/**
 * Cover factor on the scale of Peirce: 28 where threads of cotton lie touching.
 *
 * @formula coverFactor = threadsPerInch ÷ √cottonCount
 * @units threads per inch; cotton count → on the scale of Peirce
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source woven-fabric-calculation
 * @example coverFactorByPeirce({ threadsPerInch: 60, cottonCount: 25 }) // 12
 */
export const coverFactorByPeirce: Calculation<CoverFactorByPeirceInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "coverFactorByPeirce",
  inputs: {
    threadsPerInch: plainNumber("threads per inch", "ends or picks"),
    cottonCount: plainNumber("cotton count", "of their yarn"),
  },
  formula: "coverFactor = threadsPerInch ÷ √cottonCount",
  result: plainNumber("on the scale of Peirce", "of one set of threads"),
  source: wovenCalculation,
}));
