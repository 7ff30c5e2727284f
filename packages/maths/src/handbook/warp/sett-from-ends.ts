import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brinton1919 } from "../../sources/index.js";
import { endsPerCentimetre, EndsPerLength, endsPerInch, Length } from "../../units/index.js";

export interface SettFromEndsInput {
  /** In the width. */
  readonly ends: number;
  /** In the reed for the sett there, of the cloth for that of the cloth. */
  readonly width: Length;
}

/**
 * Sett from the ends counted in a width, in the reed or in the cloth.
 *
 * @formula sett = ends ÷ width
 * @units ends; a length → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source brinton-1919
 * @example settFromEnds({ ends: 528, width: inches(22) }).in(endsPerInch) // 24
 */
export const settFromEnds: Calculation<SettFromEndsInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settFromEnds",
  inputs: {
    ends: whole("ends", "in the width", { atLeast: 1 }),
    width: positive(Length, "in the reed for the sett there, of the cloth for that of the cloth"),
  },
  formula: "sett = ends ÷ width",
  result: positive(EndsPerLength, "where the width was measured"),
  resultIn: [endsPerInch, endsPerCentimetre],
  source: brinton1919,
  slips: [
    { says: "leaves the first end out, counting the spaces between the ends", instead: "sett = (ends − 1) ÷ width" },
  ],
}));
