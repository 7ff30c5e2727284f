import { atLeastZero, calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface WarpForOrderInput {
  /** In all, at weaving tension. */
  readonly woven: Length;
  /** Of the thread, from wound to weaving tension. */
  readonly takeUp: Loss;
  /** Of warp left unwoven, in all. */
  readonly fringes: Length;
  /** Warp that cannot be woven. */
  readonly loomWaste: Length;
}

/**
 * Length of one warp for all that is woven on it: fringes are warp left unwoven, and the waste stands in it once.
 *
 * @formula
 * ```text
 * threadInCloth = woven ÷ (1 − takeUp)
 * warp = threadInCloth + fringes + loomWaste
 * ```
 * @units a length; a percentage lost → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source cnch-2016
 * @example warpForOrder({ woven: inches(175), takeUp: percentLost(8), fringes: inches(0), loomWaste: inches(10) }).in(inches) // 200.217…
 */
export const warpForOrder: Calculation<WarpForOrderInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "warpForOrder",
  inputs: {
    woven: positive(Length, "in all, at weaving tension"),
    takeUp: loss("of the thread, from wound to weaving tension"),
    fringes: atLeastZero(Length, "of warp left unwoven, in all"),
    loomWaste: atLeastZero(Length, "warp that cannot be woven"),
  },
  formula: `
    threadInCloth = woven ÷ (1 − takeUp)
    warp = threadInCloth + fringes + loomWaste`,
  result: positive(Length, "to wind"),
  source: cnch2016,
  slips: [
    {
      says: "lets the fringes take up with the cloth, though they are not woven",
      instead: "warp = (woven + fringes) ÷ (1 − takeUp) + loomWaste",
    },
  ],
}));
