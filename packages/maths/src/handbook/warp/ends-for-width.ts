import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import { EndsPerLength, Length } from "../../units/index.js";

export interface EndsForWidthInput {
  /** In the reed. */
  readonly sett: EndsPerLength;
  /** From the first end to the last. */
  readonly widthInReed: Length;
  /** Taken whole. */
  readonly threadingRepeat: number;
  /** That balance the last repeat. */
  readonly balanceEnds: number;
}

/**
 * Ends for a width in the reed, in whole threading repeats and the ends that balance the last one.
 *
 * @formula
 * ```text
 * endsInWidth = sett × widthInReed
 * repeats     = roundUp((endsInWidth − balanceEnds) ÷ threadingRepeat)
 * ends        = repeats × threadingRepeat + balanceEnds
 * ```
 * @units a sett; a length; ends in one threading repeat; ends → ends
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example
 * endsForWidth({ sett: endsPerInch(30), widthInReed: inches("26.25"), threadingRepeat: 8, balanceEnds: 1 }) // 793
 */
export const endsForWidth: Calculation<EndsForWidthInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsForWidth",
  inputs: {
    sett: positive(EndsPerLength, "in the reed"),
    widthInReed: positive(Length, "from the first end to the last"),
    threadingRepeat: whole("ends in one threading repeat", "taken whole", { atLeast: 1 }),
    balanceEnds: whole("ends", "that balance the last repeat", { atLeast: 0 }),
  },
  formula: `
    endsInWidth = sett × widthInReed
    repeats     = roundUp((endsInWidth − balanceEnds) ÷ threadingRepeat)
    ends        = repeats × threadingRepeat + balanceEnds`,
  atLeast: { repeats: 0 },
  result: whole("ends", "in the reed", { atLeast: 1 }),
  source: commonPractice,
  slips: [
    {
      says: "takes the whole width and adds the balance ends to it",
      instead: "repeats = roundUp(endsInWidth ÷ threadingRepeat)",
    },
  ],
}));
