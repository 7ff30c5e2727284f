import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { PicksPerLength } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface PicksAtLoomInput {
  /** To the length, wanted in the finished cloth. */
  readonly picksFinished: PicksPerLength;
  /** Of the cloth, from weaving tension to finished. */
  readonly loomToFinished: Loss;
}

/**
 * Closeness of the picks at weaving tension, for those wanted in the finished cloth.
 *
 * @formula picks = picksFinished × (1 − loomToFinished)
 * @units a number of picks; a percentage lost → a number of picks
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example picksAtLoom({ picksFinished: picksPerInch(20), loomToFinished: percentLost(10) }).in(picksPerInch) // 18
 */
export const picksAtLoom: Calculation<PicksAtLoomInput, PicksPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "picksAtLoom",
  inputs: {
    picksFinished: positive(PicksPerLength, "to the length, wanted in the finished cloth"),
    loomToFinished: loss("of the cloth, from weaving tension to finished"),
  },
  formula: "picks = picksFinished × (1 − loomToFinished)",
  result: positive(PicksPerLength, "to beat at weaving tension"),
  resultIn: "picksFinished",
  source: commonPractice,
}));
