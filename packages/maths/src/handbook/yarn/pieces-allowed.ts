import { atLeastZero, calculation, partsToo, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface PiecesAllowedInput {
  /** That were reckoned. */
  readonly pieces: number;
  /** Of this yarn. */
  readonly onHand: Length;
  /** Of this yarn, for the pieces reckoned. */
  readonly needed: Length;
  /** Of this yarn, for one piece more. */
  readonly oneMore: Length;
}

/**
 * Pieces that a yarn on hand allows, with the part of one that is left: so many whole ones and no more.
 *
 * @formula allowed = orNothing(pieces + (onHand − needed) ÷ oneMore)
 * @units pieces; a length → pieces
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example piecesAllowed({ pieces: 5, onHand: yards(430), needed: yards(380), oneMore: yards(80) }) // 5.625
 */
export const piecesAllowed: Calculation<PiecesAllowedInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "piecesAllowed",
  inputs: {
    pieces: whole("pieces", "that were reckoned", { atLeast: 0 }),
    onHand: atLeastZero(Length, "of this yarn"),
    needed: atLeastZero(Length, "of this yarn, for the pieces reckoned"),
    oneMore: positive(Length, "of this yarn, for one piece more"),
  },
  formula: "allowed = orNothing(pieces + (onHand − needed) ÷ oneMore)",
  result: partsToo("pieces", "that the yarn allows", { atLeast: 0 }),
  source: commonPractice,
}));
