import { calculation, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import type { Share } from "../../units/index.js";

export interface TotalCoverInput {
  /** Of the cloth, hidden by the warp. */
  readonly warpCover: Share;
  /** Of the cloth, hidden by the weft. */
  readonly weftCover: Share;
}

/**
 * Share of the cloth that warp and weft hide together, the crossings counted once.
 *
 * @formula totalCover = warpCover + weftCover − warpCover × weftCover
 * @units a share in percent → a share in percent
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example totalCover({ warpCover: percentOf(50), weftCover: percentOf(40) }).in(percentOf) // 70
 */
export const totalCover: Calculation<TotalCoverInput, Share> = /* @__PURE__ */ calculation(() => ({
  name: "totalCover",
  inputs: {
    warpCover: share("of the cloth, hidden by the warp"),
    weftCover: share("of the cloth, hidden by the weft"),
  },
  formula: "totalCover = warpCover + weftCover − warpCover × weftCover",
  result: share("of the cloth, hidden"),
  resultIn: "warpCover",
  source: gateTextile,
}));
