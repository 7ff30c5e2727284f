import { added, atLeastZero, calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wolfensberger1921 } from "../../sources/index.js";
import { Length, Mass, DirectCount } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface WarpMassDirectInput {
  /** Of this yarn. */
  readonly ends: number;
  /** Of every end, loom waste counted in. */
  readonly warpLength: Length;
  /** Of the finished thread. */
  readonly count: DirectCount;
  /** To what is in the warp, for knots and breaks in winding. */
  readonly allowance: Addition;
}

/**
 * Mass of the yarn in a warp, from its direct count.
 *
 * @formula
 * ```text
 * yarn = ends × warpLength
 * mass = yarn × count × (1 + allowance)
 * ```
 * @units ends; a length; a direct count; a percentage added → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source wolfensberger-1921
 * @example warpMassDirect({ ends: 4000, warpLength: metres(10), count: tex(25), allowance: percentAdded(4) }).in(kilograms) // 1.04
 */
export const warpMassDirect: Calculation<WarpMassDirectInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "warpMassDirect",
  inputs: {
    ends: whole("ends", "of this yarn", { atLeast: 0 }),
    warpLength: positive(Length, "of every end, loom waste counted in"),
    count: positive(DirectCount, "of the finished thread"),
    allowance: added("to what is in the warp, for knots and breaks in winding"),
  },
  formula: `
    yarn = ends × warpLength
    mass = yarn × count × (1 + allowance)`,
  result: atLeastZero(Mass, "to have"),
  forUse: "up",
  source: wolfensberger1921,
}));
