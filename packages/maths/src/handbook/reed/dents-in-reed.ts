import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Length, DentsPerLength } from "../../units/index.js";

export interface DentsInReedInput {
  /** Of the reed. */
  readonly reed: DentsPerLength;
  /** Between the end bars. */
  readonly reedLength: Length;
}

/**
 * Whole dents that a reed has in its own width.
 *
 * @formula dents = roundDown(reed × reedLength)
 * @units a reed number; a length → dents
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brooks-1892
 * @example dentsInReed({ reed: dentsPerTenCentimetres(30), reedLength: centimetres(70) }) // 210
 */
export const dentsInReed: Calculation<DentsInReedInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "dentsInReed",
  inputs: {
    reed: positive(DentsPerLength, "of the reed"),
    reedLength: positive(Length, "between the end bars"),
  },
  formula: "dents = roundDown(reed × reedLength)",
  result: whole("dents", "that are whole", { atLeast: 0 }),
  source: brooks1892,
}));
