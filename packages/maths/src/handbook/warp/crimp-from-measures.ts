import { added, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { hossen2015 } from "../../sources/index.js";
import { Length, percentAdded } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface CrimpFromMeasuresInput {
  /** Drawn out straight. */
  readonly threadLength: Length;
  /** It lay in. */
  readonly clothLength: Length;
}

/**
 * Crimp of a thread drawn out of a cloth: what it is longer, of the cloth.
 *
 * @formula crimp = (threadLength − clothLength) ÷ clothLength
 * @units a length → a percentage added
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source hossen-2015
 * @example crimpFromMeasures({ threadLength: centimetres("21.2"), clothLength: centimetres(20) }).in(percentAdded) // 6
 */
export const crimpFromMeasures: Calculation<CrimpFromMeasuresInput, Addition> = /* @__PURE__ */ calculation(() => ({
  name: "crimpFromMeasures",
  inputs: {
    threadLength: positive(Length, "drawn out straight"),
    clothLength: positive(Length, "it lay in"),
  },
  formula: "crimp = (threadLength − clothLength) ÷ clothLength",
  result: added("to the length of the cloth"),
  resultIn: [percentAdded],
  source: hossen2015,
}));
