import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface WidthInReedFromFinishedInput {
  /** Washed and pressed. */
  readonly finishedWidth: Length;
  /** Of the width, from reed to finished. */
  readonly reedToFinished: Loss;
}

/**
 * Width in the reed for a finished width: what weaving and washing take away is divided out.
 *
 * @formula widthInReed = finishedWidth ÷ (1 − reedToFinished)
 * @units a length; a percentage lost → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source cnch-2016
 * @example widthInReedFromFinished({ finishedWidth: inches(17), reedToFinished: percentLost(15) }).in(inches) // 20
 */
export const widthInReedFromFinished: Calculation<WidthInReedFromFinishedInput, Length> = /* @__PURE__ */ calculation(
  () => ({
    name: "widthInReedFromFinished",
    inputs: {
      finishedWidth: positive(Length, "washed and pressed"),
      reedToFinished: loss("of the width, from reed to finished"),
    },
    formula: "widthInReed = finishedWidth ÷ (1 − reedToFinished)",
    result: positive(Length, "from the first end to the last"),
    forUse: "up",
    source: cnch2016,
    toldIn: "finishedWidth",
  }),
);
