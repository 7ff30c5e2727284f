import { calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface FinishedWidthInput {
  /** The ends take in the reed. */
  readonly widthInReed: Length;
  /** Of the width, from reed to finished. */
  readonly reedToFinished: Loss;
}

/**
 * Width of the finished cloth, from its width in the reed.
 *
 * @formula finished = widthInReed × (1 − reedToFinished)
 * @units a length; a percentage lost → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source cnch-2016
 * @example finishedWidth({ widthInReed: inches(20), reedToFinished: percentLost(15) }).in(inches) // 17
 */
export const finishedWidth: Calculation<FinishedWidthInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "finishedWidth",
  inputs: {
    widthInReed: positive(Length, "the ends take in the reed"),
    reedToFinished: loss("of the width, from reed to finished"),
  },
  formula: "finished = widthInReed × (1 − reedToFinished)",
  result: positive(Length, "washed and pressed"),
  source: cnch2016,
}));
