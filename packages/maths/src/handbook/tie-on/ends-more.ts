import { calculation, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";

export interface EndsMoreInput {
  /** Of the one. */
  readonly ends: number;
  /** Of the other. */
  readonly than: number;
}

/**
 * How many ends are more than others; none where they are as many or fewer.
 *
 * @formula more = orNothing(ends − than)
 * @units ends → ends
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example endsMore({ ends: 264, than: 240 }) // 24
 */
export const endsMore: Calculation<EndsMoreInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsMore",
  inputs: {
    ends: whole("ends", "of the one", { atLeast: 0 }),
    than: whole("ends", "of the other", { atLeast: 0 }),
  },
  formula: "more = orNothing(ends − than)",
  result: whole("ends", "more", { atLeast: 0 }),
  source: commonPractice,
}));
