import { added, atLeastZero, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { Length, Mass, IndirectCount, PicksPerLength } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface WeftMassInput {
  /** Counted where the picks were. */
  readonly wovenLength: Length;
  /** To the length; where several threads are thrown together, all of them. */
  readonly picks: PicksPerLength;
  /** Not that of the cloth, which is narrower. */
  readonly widthInReed: Length;
  /** Of the finished thread. */
  readonly count: IndirectCount;
  /** To the weft laid straight, for its crimp and for waste. */
  readonly allowance: Addition;
}

/**
 * Mass of the weft in a woven length, from its indirect count.
 *
 * @formula
 * ```text
 * weft = wovenLength × picks × widthInReed
 * mass = weft ÷ count × (1 + allowance)
 * ```
 * @units a length; a number of picks; an indirect count; a percentage added → a mass
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source brooks-1892
 * @example weftMass({ wovenLength: yards(36), picks: picksPerInch(64), widthInReed: inches("37.5"), count: cottonCount(36), allowance: percentAdded(0) }).in(pounds) // 2.857…
 */
export const weftMass: Calculation<WeftMassInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "weftMass",
  inputs: {
    wovenLength: positive(Length, "counted where the picks were"),
    picks: positive(PicksPerLength, "to the length; where several threads are thrown together, all of them"),
    widthInReed: positive(Length, "not that of the cloth, which is narrower"),
    count: positive(IndirectCount, "of the finished thread"),
    allowance: added("to the weft laid straight, for its crimp and for waste"),
  },
  formula: `
    weft = wovenLength × picks × widthInReed
    mass = weft ÷ count × (1 + allowance)`,
  result: atLeastZero(Mass, "to have"),
  forUse: "up",
  source: brooks1892,
}));
