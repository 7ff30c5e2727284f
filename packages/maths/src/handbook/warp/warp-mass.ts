import { added, atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wolfensberger1921 } from "../../sources/index.js";
import { Length, Mass, IndirectCount } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface WarpMassInput {
  /** Of this yarn. */
  readonly ends: number;
  /** Of every end, loom waste counted in. */
  readonly warpLength: Length;
  /** Of the finished thread. */
  readonly count: IndirectCount;
  /** To what is in the warp, for knots and breaks in winding. */
  readonly allowance: Addition;
}

/**
 * Mass of the yarn in a warp, from its indirect count.
 *
 * @formula
 * ```text
 * yarn = ends × warpLength
 * mass = yarn ÷ count × (1 + allowance)
 * ```
 * @units ends; a length; an indirect count; a percentage added → a mass
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source wolfensberger-1921
 * @example warpMass({ ends: 3240, warpLength: yards(42), count: cottonCount(32), allowance: percentAdded(0) }).in(pounds) // 5.0625
 */
export const warpMass: Calculation<WarpMassInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "warpMass",
  inputs: {
    ends: whole("ends", "of this yarn", { atLeast: 0 }),
    warpLength: positive(Length, "of every end, loom waste counted in"),
    count: positive(IndirectCount, "of the finished thread"),
    allowance: added("to what is in the warp, for knots and breaks in winding"),
  },
  formula: `
    yarn = ends × warpLength
    mass = yarn ÷ count × (1 + allowance)`,
  result: atLeastZero(Mass, "to have"),
  forUse: "up",
  source: wolfensberger1921,
}));
