import { calculation, positive, unitFor } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { astmD2260 } from "../../sources/index.js";
import { DirectCount, IndirectCount } from "../../units/index.js";

export interface DirectFromIndirectInput {
  /** Of the yarn, in any indirect system. */
  readonly count: IndirectCount;
  /** The count system wanted. */
  readonly system: Unit<"mass per length">;
}

/**
 * A direct count from an indirect one: the heavier the number of the one, the lighter that of the other.
 *
 * @formula direct = system.length ÷ count ÷ system.mass
 * @units an indirect count; a unit for a direct count → a direct count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source astm-d2260
 * @example directFromIndirect({ count: cottonCount(20), system: tex }).in(tex) // 29.527…
 */
export const directFromIndirect: Calculation<DirectFromIndirectInput, DirectCount> = /* @__PURE__ */ calculation(
  () => ({
    name: "directFromIndirect",
    inputs: {
      count: positive(IndirectCount, "of the yarn, in any indirect system"),
      system: unitFor(DirectCount, "the count system wanted"),
    },
    formula: "direct = system.length ÷ count ÷ system.mass",
    result: positive(DirectCount, "in the system wanted"),
    resultIn: "system",
    source: astmD2260,
  }),
);
