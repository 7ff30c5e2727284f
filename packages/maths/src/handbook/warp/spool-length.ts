import { atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { vogl2001 } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface SpoolLengthInput {
  /** That use this spool. */
  readonly sections: number;
  /** Of every end, loom waste counted in. */
  readonly warpLength: Length;
  /** Lost at the end of every section. */
  readonly cutWaste: Length;
}

/**
 * Length to wind on one spool of the creel, for the sections that use it.
 *
 * @formula length = sections × (warpLength + cutWaste)
 * @units sections; a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source vogl-2001
 * @example spoolLength({ sections: 20, warpLength: yards(25), cutWaste: yards("0.5") }).in(yards) // 510
 */
export const spoolLength: Calculation<SpoolLengthInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "spoolLength",
  inputs: {
    sections: whole("sections", "that use this spool", { atLeast: 1 }),
    warpLength: positive(Length, "of every end, loom waste counted in"),
    cutWaste: atLeastZero(Length, "lost at the end of every section"),
  },
  formula: "length = sections × (warpLength + cutWaste)",
  result: positive(Length, "on the spool"),
  forUse: "up",
  source: vogl2001,
  slips: [
    {
      says: "counts the cutting waste once instead of for every section",
      instead: "length = sections × warpLength + cutWaste",
    },
  ],
}));
