import type { Weave } from "./drawn.js";

/**
 * Plain weave, which is tabby: every pick over one end and under one.
 *
 * @example weaveQuantities(plainWeave).ofPicks.longestFloat // 1
 */
export const plainWeave: Weave = /* @__PURE__ */ Object.freeze(["x.", ".x"]);
