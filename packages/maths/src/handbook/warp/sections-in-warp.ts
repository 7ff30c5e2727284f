import { calculation, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cupOnTheBus2018 } from "../../sources/index.js";

export interface SectionsInWarpInput {
  /** In the warp. */
  readonly ends: number;
  /** In one section. */
  readonly endsPerSection: number;
}

/**
 * Sections that a warp takes; the last may be part filled.
 *
 * @formula sections = roundUp(ends ÷ endsPerSection)
 * @units ends → sections
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source cup-on-the-bus-2018
 * @example sectionsInWarp({ ends: 440, endsPerSection: 40 }) // 11
 */
export const sectionsInWarp: Calculation<SectionsInWarpInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "sectionsInWarp",
  inputs: {
    ends: whole("ends", "in the warp", { atLeast: 1 }),
    endsPerSection: whole("ends", "in one section", { atLeast: 1 }),
  },
  formula: "sections = roundUp(ends ÷ endsPerSection)",
  result: whole("sections", "the last perhaps part filled", { atLeast: 1 }),
  source: cupOnTheBus2018,
}));
