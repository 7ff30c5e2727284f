import { added, calculation, positive, unitFor, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { commonPractice } from "../../sources/index.js";
import { IndirectCount, Length, Mass } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface CountFromClothInput {
  /** Drawn out and weighed. */
  readonly threads: number;
  /** Of the piece, along these threads. */
  readonly clothLength: Length;
  /** To the length of the cloth, of these threads. */
  readonly crimp: Addition;
  /** Of the threads together. */
  readonly mass: Mass;
  /** The count system wanted. */
  readonly system: Unit<"length per mass">;
}

/**
 * Count of the yarn in a piece of cloth, from the threads drawn out of it, weighed together.
 *
 * @formula
 * ```text
 * yarn = threads × clothLength × (1 + crimp)
 * hanks = yarn ÷ system.length
 * weight = mass ÷ system.mass
 * count = hanks ÷ weight
 * ```
 * @units threads; a length; a percentage added; a mass; a unit for an indirect count → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example countFromCloth({ threads: 100, clothLength: inches(6), crimp: percentAdded(5), mass: grains(5), system: cottonCount }).in(cottonCount) // 29.166…
 */
export const countFromCloth: Calculation<CountFromClothInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "countFromCloth",
  inputs: {
    threads: whole("threads", "drawn out and weighed", { atLeast: 1 }),
    clothLength: positive(Length, "of the piece, along these threads"),
    crimp: added("to the length of the cloth, of these threads"),
    mass: positive(Mass, "of the threads together"),
    system: unitFor(IndirectCount, "the count system wanted"),
  },
  formula: `
    yarn = threads × clothLength × (1 + crimp)
    hanks = yarn ÷ system.length
    weight = mass ÷ system.mass
    count = hanks ÷ weight`,
  result: positive(IndirectCount, "of the yarn as it lies in the cloth"),
  resultIn: "system",
  source: commonPractice,
}));
