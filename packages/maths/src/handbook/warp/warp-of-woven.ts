import { atLeastZero, calculation, loss } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface WarpOfWovenInput {
  /** At weaving tension. */
  readonly woven: Length;
  /** Of the thread, from wound to weaving tension. */
  readonly takeUp: Loss;
  /** Of warp left unwoven. */
  readonly fringes: Length;
}

/**
 * Warp in a length that is woven, with the fringes that belong to it: no loom waste.
 *
 * @formula
 * ```text
 * threadInCloth = woven ÷ (1 − takeUp)
 * warp = threadInCloth + fringes
 * ```
 * @units a length; a percentage lost → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source cnch-2016
 * @example warpOfWoven({ woven: inches(46), takeUp: percentLost(8), fringes: inches(10) }).in(inches) // 60
 */
export const warpOfWoven: Calculation<WarpOfWovenInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "warpOfWoven",
  inputs: {
    woven: atLeastZero(Length, "at weaving tension"),
    takeUp: loss("of the thread, from wound to weaving tension"),
    fringes: atLeastZero(Length, "of warp left unwoven"),
  },
  formula: `
    threadInCloth = woven ÷ (1 − takeUp)
    warp = threadInCloth + fringes`,
  result: atLeastZero(Length, "in cloth and fringes"),
  source: cnch2016,
  slips: [
    {
      says: "lets the fringes take up with the cloth, though they are not woven",
      instead: "warp = (woven + fringes) ÷ (1 − takeUp)",
    },
  ],
}));
