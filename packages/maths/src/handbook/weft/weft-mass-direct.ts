import { added, atLeastZero, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wolfensberger1921 } from "../../sources/index.js";
import { Length, Mass, DirectCount, PicksPerLength } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface WeftMassDirectInput {
  /** Counted where the picks were. */
  readonly wovenLength: Length;
  /** To the length; where several threads are thrown together, all of them. */
  readonly picks: PicksPerLength;
  /** Not that of the cloth, which is narrower. */
  readonly widthInReed: Length;
  /** Of the finished thread. */
  readonly count: DirectCount;
  /** To the weft laid straight, for its crimp and for waste. */
  readonly allowance: Addition;
}

/**
 * Mass of the weft in a woven length, from its direct count.
 *
 * @formula
 * ```text
 * weft = wovenLength × picks × widthInReed
 * mass = weft × count × (1 + allowance)
 * ```
 * @units a length; a number of picks; a direct count; a percentage added → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source wolfensberger-1921
 * @example weftMassDirect({ wovenLength: metres(10), picks: picksPerCentimetre(8), widthInReed: centimetres(50), count: tex(50), allowance: percentAdded(0) }).in(grams) // 200
 */
export const weftMassDirect: Calculation<WeftMassDirectInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "weftMassDirect",
  inputs: {
    wovenLength: positive(Length, "counted where the picks were"),
    picks: positive(PicksPerLength, "to the length; where several threads are thrown together, all of them"),
    widthInReed: positive(Length, "not that of the cloth, which is narrower"),
    count: positive(DirectCount, "of the finished thread"),
    allowance: added("to the weft laid straight, for its crimp and for waste"),
  },
  formula: `
    weft = wovenLength × picks × widthInReed
    mass = weft × count × (1 + allowance)`,
  result: atLeastZero(Mass, "to have"),
  forUse: "up",
  source: wolfensberger1921,
}));
