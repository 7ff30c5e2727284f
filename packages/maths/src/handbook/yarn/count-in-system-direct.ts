import { calculation, positive, unitFor } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { gateTextile } from "../../sources/index.js";
import { DirectCount } from "../../units/index.js";

export interface CountInSystemDirectInput {
  /** Of the yarn, in any direct system. */
  readonly count: DirectCount;
  /** The count system wanted. */
  readonly system: Unit<"mass per length">;
}

/**
 * A direct count in another direct system: what the length of that system weighs.
 *
 * @formula inSystem = count × system.length ÷ system.mass
 * @units a direct count; a unit for a direct count → a direct count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example countInSystemDirect({ count: tex(20), system: denier }).in(denier) // 180
 */
export const countInSystemDirect: Calculation<CountInSystemDirectInput, DirectCount> = /* @__PURE__ */ calculation(
  () => ({
    name: "countInSystemDirect",
    inputs: {
      count: positive(DirectCount, "of the yarn, in any direct system"),
      system: unitFor(DirectCount, "the count system wanted"),
    },
    formula: "inSystem = count × system.length ÷ system.mass",
    result: positive(DirectCount, "in the system wanted"),
    resultIn: "system",
    source: gateTextile,
  }),
);
