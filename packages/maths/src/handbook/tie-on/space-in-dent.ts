import { calculation, positive, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { DentsPerLength, Length } from "../../units/index.js";
import type { Share } from "../../units/index.js";

export interface SpaceInDentInput {
  /** Of the reed. */
  readonly reed: DentsPerLength;
  /** Of one dent with its wire, free between the wires. */
  readonly open: Share;
}

/**
 * Free space of one dent where it was not measured. A gap that was measured is better than any share.
 *
 * @formula
 * ```text
 * pitch = 1 ÷ reed
 * space = open × pitch
 * ```
 * @units a reed number; a share in percent → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example spaceInDent({ reed: dentsPerInch(10), open: percentOf(60) }).in(inches) // 0.06
 */
export const spaceInDent: Calculation<SpaceInDentInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "spaceInDent",
  inputs: {
    reed: positive(DentsPerLength, "of the reed"),
    open: share("of one dent with its wire, free between the wires"),
  },
  formula: `
    pitch = 1 ÷ reed
    space = open × pitch`,
  result: positive(Length, "free between two wires of the reed"),
  source: commonPractice,
}));
