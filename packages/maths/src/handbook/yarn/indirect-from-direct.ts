import { calculation, positive, unitFor } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { gateTextile } from "../../sources/index.js";
import { DirectCount, IndirectCount } from "../../units/index.js";

export interface IndirectFromDirectInput {
  /** Of the yarn, in any direct system. */
  readonly count: DirectCount;
  /** The count system wanted. */
  readonly system: Unit<"length per mass">;
}

/**
 * An indirect count from a direct one: how often the length of the system goes into its mass of this yarn.
 *
 * @formula indirect = system.mass ÷ count ÷ system.length
 * @units a direct count; a unit for an indirect count → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example indirectFromDirect({ count: tex(20), system: metricCount }).in(metricCount) // 50
 */
export const indirectFromDirect: Calculation<IndirectFromDirectInput, IndirectCount> = /* @__PURE__ */ calculation(
  () => ({
    name: "indirectFromDirect",
    inputs: {
      count: positive(DirectCount, "of the yarn, in any direct system"),
      system: unitFor(IndirectCount, "the count system wanted"),
    },
    formula: "indirect = system.mass ÷ count ÷ system.length",
    result: positive(IndirectCount, "in the system wanted"),
    resultIn: "system",
    source: gateTextile,
  }),
);
