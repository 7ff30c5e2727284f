import { calculation, positive, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { davis1920 } from "../../sources/index.js";
import { IndirectCount } from "../../units/index.js";
import type { Share } from "../../units/index.js";

export interface CountFromShareInput {
  /** Of the folded thread. */
  readonly folded: IndirectCount;
  /** Of the mass of the folded thread. */
  readonly share: Share;
}

/**
 * Count of a thread that is to make up a given share of the mass of a folded thread.
 *
 * @formula count = folded ÷ share
 * @units an indirect count; a share in percent → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source davis-1920
 * @example countFromShare({ folded: cottonCount(12), share: percentOf(20) }).in(cottonCount) // 60
 */
export const countFromShare: Calculation<CountFromShareInput, IndirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "countFromShare",
  inputs: {
    folded: positive(IndirectCount, "of the folded thread"),
    share: share("of the mass of the folded thread"),
  },
  formula: "count = folded ÷ share",
  result: positive(IndirectCount, "of that thread"),
  resultIn: "folded",
  source: davis1920,
}));
