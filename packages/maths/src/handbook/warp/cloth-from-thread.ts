import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { hossen2015 } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface ClothFromThreadInput {
  /** Of the thread. */
  readonly threadLength: Length;
  /** To the length of the cloth. */
  readonly crimp: Addition;
}

/**
 * Length of cloth that a length of warp makes, its crimp divided out.
 *
 * @formula cloth = threadLength ÷ (1 + crimp)
 * @units a length; a percentage added → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source hossen-2015
 * @example clothFromThread({ threadLength: metres(810), crimp: percentAdded(8) }).in(metres) // 750
 */
export const clothFromThread: Calculation<ClothFromThreadInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "clothFromThread",
  inputs: {
    threadLength: positive(Length, "of the thread"),
    crimp: added("to the length of the cloth"),
  },
  formula: "cloth = threadLength ÷ (1 + crimp)",
  result: positive(Length, "of the cloth"),
  forUse: "down",
  source: hossen2015,
}));
