import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brinton1919 } from "../../sources/index.js";
import { Length, DentsPerLength, dentsPerInch, dentsPerTenCentimetres } from "../../units/index.js";

export interface ReedFromDentsInput {
  /** Counted. */
  readonly dents: number;
  /** They were counted on. */
  readonly length: Length;
}

/**
 * Number of a reed from the dents counted on a length of it.
 *
 * @formula reed = dents ÷ length
 * @units dents; a length → a reed number
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source brinton-1919
 * @example reedFromDents({ dents: 120, length: centimetres(15) }).in(dentsPerTenCentimetres) // 80
 */
export const reedFromDents: Calculation<ReedFromDentsInput, DentsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "reedFromDents",
  inputs: {
    dents: whole("dents", "counted", { atLeast: 1 }),
    length: positive(Length, "they were counted on"),
  },
  formula: "reed = dents ÷ length",
  result: positive(DentsPerLength, "of the reed"),
  resultIn: [dentsPerInch, dentsPerTenCentimetres],
  source: brinton1919,
}));
