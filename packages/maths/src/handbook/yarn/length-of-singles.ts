import { added, atLeastZero, calculation } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface LengthOfSinglesInput {
  /** Of the folded thread. */
  readonly foldedLength: Length;
  /** Of the length of the folded thread, to make its singles. */
  readonly contraction: Addition;
}

/**
 * Length that each single has before twisting, from the length of the folded thread.
 *
 * @formula singles = foldedLength × (1 + contraction)
 * @units a length; a percentage added → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example lengthOfSingles({ foldedLength: kilometres(100), contraction: percentAdded(6) }).in(kilometres) // 106
 */
export const lengthOfSingles: Calculation<LengthOfSinglesInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "lengthOfSingles",
  inputs: {
    foldedLength: atLeastZero(Length, "of the folded thread"),
    contraction: added("of the length of the folded thread, to make its singles"),
  },
  formula: "singles = foldedLength × (1 + contraction)",
  result: atLeastZero(Length, "of each single before twisting"),
  forUse: "up",
  source: gateTextile,
}));
