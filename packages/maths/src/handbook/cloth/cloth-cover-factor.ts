import { calculation, plainNumber } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { textileSchoolWeaving } from "../../sources/index.js";

export interface ClothCoverFactorInput {
  /** Of the warp. */
  readonly warpCover: number;
  /** Of the weft. */
  readonly weftCover: number;
}

/**
 * Cover factor of a whole cloth on the scale of Peirce, the crossings counted once.
 *
 * @formula clothCover = warpCover + weftCover − warpCover × weftCover ÷ 28
 * @units on the scale of Peirce → on the scale of Peirce
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source textile-school-weaving
 * @example clothCoverFactor({ warpCover: 14, weftCover: 14 }) // 21
 */
export const clothCoverFactor: Calculation<ClothCoverFactorInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "clothCoverFactor",
  inputs: {
    warpCover: plainNumber("on the scale of Peirce", "of the warp"),
    weftCover: plainNumber("on the scale of Peirce", "of the weft"),
  },
  formula: "clothCover = warpCover + weftCover − warpCover × weftCover ÷ 28",
  result: plainNumber("on the scale of Peirce", "of the cloth"),
  source: textileSchoolWeaving,
}));
