import { atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brinton1919 } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface PackagesByLengthInput {
  /** Of this yarn. */
  readonly needed: Length;
  /** Of yarn on one of them. */
  readonly packageLength: Length;
}

/**
 * Whole packages, spools, pirns or bobbins for a length of yarn.
 *
 * @formula packages = roundUp(needed ÷ packageLength)
 * @units a length → packages
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brinton-1919
 * @example packagesByLength({ needed: yards(432), packageLength: yards(48) }) // 9
 */
export const packagesByLength: Calculation<PackagesByLengthInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "packagesByLength",
  inputs: {
    needed: atLeastZero(Length, "of this yarn"),
    packageLength: positive(Length, "of yarn on one of them"),
  },
  formula: "packages = roundUp(needed ÷ packageLength)",
  result: whole("packages", "to buy or wind", { atLeast: 0 }),
  source: brinton1919,
}));
