import { calculation, drawnAs, plainNumber, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { hsluFadendichte } from "../../sources/index.js";
import { EndsPerLength } from "../../units/index.js";

export interface SettFromPlainInput {
  /** Of the yarn in plain weave. */
  readonly plainSett: EndsPerLength;
  /** As the rule gives for the weave. */
  readonly times: number;
}

/**
 * Sett of another weave as so many times the sett in plain weave.
 *
 * @formula sett = plainSett × times
 * @units a sett; times the plain sett → a sett
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source hslu-fadendichte
 * @example settFromPlain({ plainSett: endsPerInch(16), times: 2 }).in(endsPerInch) // 32
 */
export const settFromPlain: Calculation<SettFromPlainInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settFromPlain",
  inputs: {
    plainSett: positive(EndsPerLength, "of the yarn in plain weave"),
    times: drawnAs(plainNumber("times the plain sett", "as the rule gives for the weave"), "as given"),
  },
  formula: "sett = plainSett × times",
  result: positive(EndsPerLength, "of the other weave"),
  resultIn: "plainSett",
  source: hsluFadendichte,
}));
