import { calculation, partsToo, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Money } from "../../units/index.js";

export interface CostByPiecesInput {
  /** Worked, a half or a quarter counted as its part. */
  readonly pieces: number;
  /** For one whole piece. */
  readonly charge: Money;
}

/**
 * Cost of work paid by the piece: a half or a quarter piece is paid as its part.
 *
 * @formula cost = pieces × charge
 * @units pieces; money → money
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source common-practice
 * @example costByPieces({ pieces: 3.5, charge: currency("shillings")(12) }).toString() // "42 shillings"
 */
export const costByPieces: Calculation<CostByPiecesInput, Money> = /* @__PURE__ */ calculation(() => ({
  name: "costByPieces",
  inputs: {
    pieces: partsToo("pieces", "worked, a half or a quarter counted as its part"),
    charge: positive(Money, "for one whole piece"),
  },
  formula: "cost = pieces × charge",
  result: positive(Money, "for the pieces"),
  resultIn: "charge",
  forUse: "up",
  source: commonPractice,
}));
