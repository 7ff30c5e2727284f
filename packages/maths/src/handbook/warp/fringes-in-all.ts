import { atLeastZero, calculation, listOf, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface FringesInAllInput {
  /** Of each kind that is woven. */
  readonly number: readonly number[];
  /** Of warp left unwoven at each end of one of that kind. */
  readonly fringeEachEnd: readonly Length[];
}

/**
 * Warp left unwoven in the fringes of all pieces on one warp: it does not shrink and takes up nothing.
 *
 * @formula fringes = Σ(2 × number × fringeEachEnd)
 * @units a list, each entries; a list, each a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source cnch-2016
 * @example fringesInAll({ number: [3, 2], fringeEachEnd: [centimetres(12), centimetres(0)] }).in(centimetres) // 72
 */
export const fringesInAll: Calculation<FringesInAllInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "fringesInAll",
  inputs: {
    number: listOf(whole("entries", "of each kind that is woven", { atLeast: 0 })),
    fringeEachEnd: listOf(atLeastZero(Length, "of warp left unwoven at each end of one of that kind")),
  },
  formula: "fringes = Σ(2 × number × fringeEachEnd)",
  result: atLeastZero(Length, "of warp left unwoven"),
  source: cnch2016,
}));
