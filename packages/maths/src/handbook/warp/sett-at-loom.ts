import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { EndsPerLength } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface SettAtLoomInput {
  /** Counted on the finished cloth, or wanted in it. */
  readonly settFinished: EndsPerLength;
  /** Of the width, from reed to finished. */
  readonly reedToFinished: Loss;
}

/**
 * Sett in the reed for the one wanted in the finished cloth: the cloth narrows, and its ends close up.
 *
 * @formula sett = settFinished × (1 − reedToFinished)
 * @units a sett; a percentage lost → a sett
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example settAtLoom({ settFinished: endsPerInch(20), reedToFinished: percentLost(10) }).in(endsPerInch) // 18
 */
export const settAtLoom: Calculation<SettAtLoomInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settAtLoom",
  inputs: {
    settFinished: positive(EndsPerLength, "counted on the finished cloth, or wanted in it"),
    reedToFinished: loss("of the width, from reed to finished"),
  },
  formula: "sett = settFinished × (1 − reedToFinished)",
  result: positive(EndsPerLength, "in the reed"),
  resultIn: "settFinished",
  source: commonPractice,
}));
