import { calculation, positive, unitFor } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { woodhouseKilgour1921 } from "../../sources/index.js";
import { DirectCount, Length, Mass } from "../../units/index.js";

export interface CountFromWrappingDirectInput {
  /** Measured off, as on a wrap reel. */
  readonly length: Length;
  /** Of that length. */
  readonly mass: Mass;
  /** The count system wanted. */
  readonly system: Unit<"mass per length">;
}

/**
 * Direct count found by weighing a measured length.
 *
 * @formula
 * ```text
 * weight = mass ÷ system.mass
 * lengths = length ÷ system.length
 * count = weight ÷ lengths
 * ```
 * @units a length; a mass; a unit for a direct count → a direct count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source woodhouse-kilgour-1921
 * @example countFromWrappingDirect({ length: metres(100), mass: grams("2.5"), system: tex }).in(tex) // 25
 */
export const countFromWrappingDirect: Calculation<CountFromWrappingDirectInput, DirectCount> =
  /* @__PURE__ */ calculation(() => ({
    name: "countFromWrappingDirect",
    inputs: {
      length: positive(Length, "measured off, as on a wrap reel"),
      mass: positive(Mass, "of that length"),
      system: unitFor(DirectCount, "the count system wanted"),
    },
    formula: `
    weight = mass ÷ system.mass
    lengths = length ÷ system.length
    count = weight ÷ lengths`,
    result: positive(DirectCount, "in the system wanted"),
    resultIn: "system",
    source: woodhouseKilgour1921,
  }));
