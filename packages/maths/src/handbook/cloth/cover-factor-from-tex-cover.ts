import { calculation, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wovenFabricCalculation } from "../../sources/index.js";

export interface CoverFactorFromTexCoverInput {
  /** Of one set of threads. */
  readonly texCover: number;
}

/**
 * Cover factor on the scale of Peirce from that on the tex scale.
 *
 * @formula
 * ```text
 * texOfCottonOne = 453592.37 ÷ (840 × 0.9144)
 * peirceCover = texCover × 10 × 2.54 ÷ √texOfCottonOne
 * ```
 * @units on the tex scale → on the scale of Peirce
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source woven-fabric-calculation
 * @example coverFactorFromTexCover({ texCover: 12 }) // 12.542…
 */
export const coverFactorFromTexCover: Calculation<CoverFactorFromTexCoverInput, number> = /* @__PURE__ */ calculation(
  () => ({
    name: "coverFactorFromTexCover",
    inputs: {
      texCover: plainNumber("on the tex scale", "of one set of threads"),
    },
    formula: `
    texOfCottonOne = 453592.37 ÷ (840 × 0.9144)
    peirceCover = texCover × 10 × 2.54 ÷ √texOfCottonOne`,
    result: plainNumber("on the scale of Peirce", "of the same threads"),
    source: wovenFabricCalculation,
  }),
);
