import { calculation, plainNumber, proportionOf } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { percentOf } from "../../units/index.js";
import type { Share } from "../../units/index.js";

export interface CoverByPeirceInput {
  /** Ends or picks. */
  readonly threadsPerInch: number;
  /** Of their yarn. */
  readonly cottonCount: number;
}

/**
 * Share of the cloth that one set of cotton threads hides, by the diameters of Peirce; more than all of it where they would overlap.
 *
 * @formula cover = threadsPerInch ÷ (28 × √cottonCount)
 * @units threads per inch; cotton count → a share in percent
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-tf
 * @example coverByPeirce({ threadsPerInch: 70, cottonCount: 25 }).in(percentOf) // 50
 */
export const coverByPeirce: Calculation<CoverByPeirceInput, Share> = /* @__PURE__ */ calculation(() => ({
  name: "coverByPeirce",
  inputs: {
    threadsPerInch: plainNumber("threads per inch", "ends or picks"),
    cottonCount: plainNumber("cotton count", "of their yarn"),
  },
  formula: "cover = threadsPerInch ÷ (28 × √cottonCount)",
  result: proportionOf("of the cloth, hidden by these threads"),
  resultIn: [percentOf],
  source: gateTextile,
}));
