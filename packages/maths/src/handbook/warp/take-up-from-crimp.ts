import { added, calculation, loss } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { hossen2015 } from "../../sources/index.js";
import { percentLost } from "../../units/index.js";
import type { Loss, Addition } from "../../units/index.js";

export interface TakeUpFromCrimpInput {
  /** To the length of the cloth. */
  readonly crimp: Addition;
}

/**
 * Take-up, of the thread, from crimp, of the cloth: the same difference on another base.
 *
 * @formula takeUp = crimp ÷ (1 + crimp)
 * @units a percentage added → a percentage lost
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source hossen-2015
 * @example takeUpFromCrimp({ crimp: percentAdded(25) }).in(percentLost) // 20
 */
export const takeUpFromCrimp: Calculation<TakeUpFromCrimpInput, Loss> = /* @__PURE__ */ calculation(() => ({
  name: "takeUpFromCrimp",
  inputs: {
    crimp: added("to the length of the cloth"),
  },
  formula: "takeUp = crimp ÷ (1 + crimp)",
  result: loss("of the length of the thread"),
  resultIn: [percentLost],
  source: hossen2015,
}));
