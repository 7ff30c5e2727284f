import { calculation, positive, unitFor } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { taylor1909 } from "../../sources/index.js";
import { IndirectCount, Length, Mass } from "../../units/index.js";

export interface CountFromWrappingInput {
  /** Measured off, as on a wrap reel. */
  readonly length: Length;
  /** Of that length. */
  readonly mass: Mass;
  /** The count system wanted. */
  readonly system: Unit<"length per mass">;
}

/**
 * Yarn count found by weighing a measured length.
 *
 * @formula
 * ```text
 * hanks  = length ÷ system.length
 * weight = mass ÷ system.mass
 * count  = hanks ÷ weight
 * ```
 * @units a length; a mass; a unit for an indirect count → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source taylor-1909
 * @example countFromWrapping({ length: yards(120), mass: grains(20), system: cottonCount }).in(cottonCount) // 50
 */
export const countFromWrapping: Calculation<CountFromWrappingInput, IndirectCount> = /* @__PURE__ */ calculation(
  () => ({
    name: "countFromWrapping",
    inputs: {
      length: positive(Length, "measured off, as on a wrap reel"),
      mass: positive(Mass, "of that length"),
      system: unitFor(IndirectCount, "the count system wanted"),
    },
    formula: `
    hanks  = length ÷ system.length
    weight = mass ÷ system.mass
    count  = hanks ÷ weight`,
    result: positive(IndirectCount, "in the system wanted"),
    resultIn: "system",
    source: taylor1909,
  }),
);
