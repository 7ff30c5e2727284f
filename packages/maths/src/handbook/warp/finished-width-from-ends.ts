import { calculation, loss, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length, EndsPerLength } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface FinishedWidthFromEndsInput {
  /** In the reed. */
  readonly ends: number;
  /** In the reed. */
  readonly sett: EndsPerLength;
  /** Of the width, from reed to finished. */
  readonly reedToFinished: Loss;
}

/**
 * Width of the finished cloth from its whole ends, which settle it however it was planned.
 *
 * @formula
 * ```text
 * inReed   = ends ÷ sett
 * finished = inReed × (1 − reedToFinished)
 * ```
 * @units ends; a sett; a percentage lost → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source cnch-2016
 * @example finishedWidthFromEnds({ ends: 420, sett: endsPerInch(20), reedToFinished: percentLost(15) }).in(inches) // 17.85
 */
export const finishedWidthFromEnds: Calculation<FinishedWidthFromEndsInput, Length> = /* @__PURE__ */ calculation(
  () => ({
    name: "finishedWidthFromEnds",
    inputs: {
      ends: whole("ends", "in the reed", { atLeast: 1 }),
      sett: positive(EndsPerLength, "in the reed"),
      reedToFinished: loss("of the width, from reed to finished"),
    },
    formula: `
    inReed   = ends ÷ sett
    finished = inReed × (1 − reedToFinished)`,
    result: positive(Length, "washed and pressed"),
    source: cnch2016,
  }),
);
