import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wolfensberger1921 } from "../../sources/index.js";
import { Length, HeddlesPerLength, heddlesPerInch, heddlesPerCentimetre } from "../../units/index.js";

export interface HealdClosenessInput {
  /** One for each drawn end, a doubled end being one. */
  readonly heddles: number;
  /** That share them evenly. */
  readonly shafts: number;
  /** They are spread over. */
  readonly width: Length;
}

/**
 * Closeness of the heddles on one shaft, where all shafts carry the same number.
 *
 * @formula
 * ```text
 * onShaft   = heddles ÷ shafts
 * closeness = onShaft ÷ width
 * ```
 * @units heddles; shafts; a length → a heald number
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source wolfensberger-1921
 * @example healdCloseness({ heddles: 3832, shafts: 4, width: inches(24) }).in(heddlesPerInch) // 39.916…
 */
export const healdCloseness: Calculation<HealdClosenessInput, HeddlesPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "healdCloseness",
  inputs: {
    heddles: whole("heddles", "one for each drawn end, a doubled end being one", { atLeast: 1 }),
    shafts: whole("shafts", "that share them evenly", { atLeast: 1 }),
    width: positive(Length, "they are spread over"),
  },
  formula: `
    onShaft   = heddles ÷ shafts
    closeness = onShaft ÷ width`,
  result: positive(HeddlesPerLength, "on each shaft"),
  resultIn: [heddlesPerInch, heddlesPerCentimetre],
  source: wolfensberger1921,
}));
