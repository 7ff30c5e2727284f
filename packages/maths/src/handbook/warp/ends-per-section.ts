import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { vogl2001 } from "../../sources/index.js";
import { Length, EndsPerLength } from "../../units/index.js";

export interface EndsPerSectionInput {
  /** In the reed. */
  readonly sett: EndsPerLength;
  /** Between two pegs of the beam. */
  readonly sectionWidth: Length;
}

/**
 * Whole ends in a section of the warp beam; what is over in the width goes to another section.
 *
 * @formula ends = roundDown(sett × sectionWidth)
 * @units a sett; a length → ends
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source vogl-2001
 * @example endsPerSection({ sett: endsPerInch(20), sectionWidth: inches(2) }) // 40
 */
export const endsPerSection: Calculation<EndsPerSectionInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsPerSection",
  inputs: {
    sett: positive(EndsPerLength, "in the reed"),
    sectionWidth: positive(Length, "between two pegs of the beam"),
  },
  formula: "ends = roundDown(sett × sectionWidth)",
  result: whole("ends", "in one section, one spool each", { atLeast: 1 }),
  source: vogl2001,
}));
