import { calculation, listOf, positive, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Mass } from "../../units/index.js";
import type { Share } from "../../units/index.js";

export interface FibreInYarnsInput {
  /** One yarn that holds the fibre. */
  readonly yarns: readonly Mass[];
  /** Of the fibre, in the mass of that yarn. */
  readonly shares: readonly Share[];
}

/**
 * Mass of one fibre in several yarns, each with its share of it.
 *
 * @formula fibre = Σ(yarns × shares)
 * @units a list, each a mass; a list, each a share in percent → a mass
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source common-practice
 * @example fibreInYarns({ yarns: [grams(200), grams(50)], shares: [percentOf(70), percentOf(100)] }).in(grams) // 190
 */
export const fibreInYarns: Calculation<FibreInYarnsInput, Mass> = /* @__PURE__ */ calculation(() => ({
  name: "fibreInYarns",
  inputs: {
    yarns: listOf(positive(Mass, "one yarn that holds the fibre")),
    shares: listOf(share("of the fibre, in the mass of that yarn")),
  },
  formula: "fibre = Σ(yarns × shares)",
  result: positive(Mass, "of the fibre"),
  source: commonPractice,
}));
