import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { clothQuantities } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface ThreadForClothInput {
  /** Of the cloth. */
  readonly clothLength: Length;
  /** To the length of the cloth. */
  readonly crimp: Addition;
}

/**
 * Length of thread in a length of cloth, its crimp added, as mills reckon it.
 *
 * @formula thread = clothLength × (1 + crimp)
 * @units a length; a percentage added → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source cloth-quantities
 * @example threadForCloth({ clothLength: yards(40), crimp: percentAdded(5) }).in(yards) // 42
 */
export const threadForCloth: Calculation<ThreadForClothInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "threadForCloth",
  inputs: {
    clothLength: positive(Length, "of the cloth"),
    crimp: added("to the length of the cloth"),
  },
  formula: "thread = clothLength × (1 + crimp)",
  result: positive(Length, "of the thread"),
  forUse: "up",
  source: clothQuantities,
}));
