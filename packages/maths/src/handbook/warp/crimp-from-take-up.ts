import { added, calculation, loss } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { hossen2015 } from "../../sources/index.js";
import { percentAdded } from "../../units/index.js";
import type { Loss, Addition } from "../../units/index.js";

export interface CrimpFromTakeUpInput {
  /** Of the length of the thread. */
  readonly takeUp: Loss;
}

/**
 * Crimp, of the cloth, from take-up, of the thread: the same difference on another base.
 *
 * @formula crimp = takeUp ÷ (1 − takeUp)
 * @units a percentage lost → a percentage added
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source hossen-2015
 * @example crimpFromTakeUp({ takeUp: percentLost(20) }).in(percentAdded) // 25
 */
export const crimpFromTakeUp: Calculation<CrimpFromTakeUpInput, Addition> = /* @__PURE__ */ calculation(() => ({
  name: "crimpFromTakeUp",
  inputs: {
    takeUp: loss("of the length of the thread"),
  },
  formula: "crimp = takeUp ÷ (1 − takeUp)",
  result: added("to the length of the cloth"),
  resultIn: [percentAdded],
  source: hossen2015,
}));
