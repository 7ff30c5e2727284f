import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { PicksPerLength } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface PicksFinishedInput {
  /** To the length, counted at weaving tension. */
  readonly picksAtLoom: PicksPerLength;
  /** Of the cloth, from weaving tension to finished. */
  readonly loomToFinished: Loss;
}

/**
 * Closeness of the picks in the finished cloth, from those at weaving tension: the cloth shortens and they close up.
 *
 * @formula picks = picksAtLoom ÷ (1 − loomToFinished)
 * @units a number of picks; a percentage lost → a number of picks
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example picksFinished({ picksAtLoom: picksPerInch(18), loomToFinished: percentLost(10) }).in(picksPerInch) // 20
 */
export const picksFinished: Calculation<PicksFinishedInput, PicksPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "picksFinished",
  inputs: {
    picksAtLoom: positive(PicksPerLength, "to the length, counted at weaving tension"),
    loomToFinished: loss("of the cloth, from weaving tension to finished"),
  },
  formula: "picks = picksAtLoom ÷ (1 − loomToFinished)",
  result: positive(PicksPerLength, "counted on the finished cloth"),
  resultIn: "picksAtLoom",
  source: commonPractice,
}));
