import { added, calculation, loss } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { percentLost } from "../../units/index.js";
import type { Addition, Loss } from "../../units/index.js";

export interface ContentFromRegainInput {
  /** Water, of the dry mass. */
  readonly regain: Addition;
}

/**
 * Moisture content of a yarn, from its regain: the same water as a part of the whole mass instead of the dry.
 *
 * @formula content = regain ÷ (1 + regain)
 * @units a percentage added → a percentage lost
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example contentFromRegain({ regain: percentAdded(25) }).in(percentLost) // 20
 */
export const contentFromRegain: Calculation<ContentFromRegainInput, Loss> = /* @__PURE__ */ calculation(() => ({
  name: "contentFromRegain",
  inputs: {
    regain: added("water, of the dry mass"),
  },
  formula: "content = regain ÷ (1 + regain)",
  result: loss("water, of the mass as it is"),
  resultIn: [percentLost],
  source: gateTextile,
}));
