import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { roberts1912 } from "../../sources/index.js";
import { EndsPerLength } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface SettFinishedInput {
  /** In the reed. */
  readonly settAtLoom: EndsPerLength;
  /** Of the width, from reed to the cloth whose sett is wanted. */
  readonly reedToFinished: Loss;
}

/**
 * Sett of the finished cloth from the one in the reed: the cloth narrows, and its ends close up.
 *
 * @formula sett = settAtLoom ÷ (1 − reedToFinished)
 * @units a sett; a percentage lost → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source roberts-1912
 * @example settFinished({ settAtLoom: endsPerInch(18), reedToFinished: percentLost(10) }).in(endsPerInch) // 20
 */
export const settFinished: Calculation<SettFinishedInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settFinished",
  inputs: {
    settAtLoom: positive(EndsPerLength, "in the reed"),
    reedToFinished: loss("of the width, from reed to the cloth whose sett is wanted"),
  },
  formula: "sett = settAtLoom ÷ (1 − reedToFinished)",
  result: positive(EndsPerLength, "of the cloth"),
  resultIn: "settAtLoom",
  source: roberts1912,
}));
