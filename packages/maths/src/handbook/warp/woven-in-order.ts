import { atLeastZero, calculation, listOf, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface WovenInOrderInput {
  /** Of each kind that is woven. */
  readonly number: readonly number[];
  /** Of one of that kind, at weaving tension. */
  readonly wovenLength: readonly Length[];
}

/**
 * Length woven on one warp for all that stands in the order of weaving, at weaving tension.
 *
 * @formula woven = Σ(number × wovenLength)
 * @units a list, each entries; a list, each a length → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source cnch-2016
 * @example wovenInOrder({ number: [1, 6], wovenLength: [inches(3), inches(20)] }).in(inches) // 123
 */
export const wovenInOrder: Calculation<WovenInOrderInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "wovenInOrder",
  inputs: {
    number: listOf(whole("entries", "of each kind that is woven", { atLeast: 0 })),
    wovenLength: listOf(atLeastZero(Length, "of one of that kind, at weaving tension")),
  },
  formula: "woven = Σ(number × wovenLength)",
  result: atLeastZero(Length, "of cloth at weaving tension"),
  source: cnch2016,
}));
