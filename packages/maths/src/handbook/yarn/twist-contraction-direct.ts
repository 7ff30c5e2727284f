import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { iso1139 } from "../../sources/index.js";
import { DirectCount, percentLost } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface TwistContractionDirectInput {
  /** Of the singles folded, nothing taken up. */
  readonly nominal: DirectCount;
  /** Of the finished thread. */
  readonly measured: DirectCount;
}

/**
 * Twist contraction, from the direct count worked out for a folded yarn and the one found by weighing it.
 *
 * @formula contraction = 1 − nominal ÷ measured
 * @units a direct count → a percentage lost
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source iso-1139
 * @example twistContractionDirect({ nominal: tex(68), measured: tex(80) }).in(percentLost) // 15
 */
export const twistContractionDirect: Calculation<TwistContractionDirectInput, Loss> = /* @__PURE__ */ calculation(
  () => ({
    name: "twistContractionDirect",
    inputs: {
      nominal: positive(DirectCount, "of the singles folded, nothing taken up"),
      measured: positive(DirectCount, "of the finished thread"),
    },
    formula: "contraction = 1 − nominal ÷ measured",
    result: loss("of the length of the singles, from single to folded"),
    resultIn: [percentLost],
    source: iso1139,
  }),
);
