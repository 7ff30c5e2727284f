import { calculation, positive, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { osterkampSettRevisited } from "../../sources/index.js";
import { EndsPerLength } from "../../units/index.js";
import type { Share } from "../../units/index.js";

export interface SettForPurposeInput {
  /** By the rule of diameters, for the yarn and weave. */
  readonly closest: EndsPerLength;
  /** Of the closest sett, for what the cloth is to do. */
  readonly share: Share;
}

/**
 * Sett for a purpose, as a share of the closest that the rule of diameters gives.
 *
 * @formula sett = closest × share
 * @units a sett; a share in percent → a sett
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source osterkamp-sett-revisited
 * @example settForPurpose({ closest: endsPerInch(25), share: percentOf(80) }).in(endsPerInch) // 20
 */
export const settForPurpose: Calculation<SettForPurposeInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settForPurpose",
  inputs: {
    closest: positive(EndsPerLength, "by the rule of diameters, for the yarn and weave"),
    share: share("of the closest sett, for what the cloth is to do"),
  },
  formula: "sett = closest × share",
  result: positive(EndsPerLength, "to weave at"),
  resultIn: "closest",
  source: osterkampSettRevisited,
}));
