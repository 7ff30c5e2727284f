import { calculation, loss, plainNumber, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { commonPractice } from "../../sources/index.js";
import type { Loss } from "../../units/index.js";

export interface HoursToWeaveInput {
  /** To throw. */
  readonly picks: number;
  /** That the weaver throws while weaving, counted over some minutes. */
  readonly picksPerMinute: number;
  /** Of the whole time at the loom. */
  readonly timeLost: Loss;
}

/**
 * Hours at the loom for so many picks, at a speed of picks a minute and with a part of the time lost to bobbins, broken threads and
 * measuring.
 *
 * @formula
 * ```text
 * minutes = picks ÷ picksPerMinute ÷ (1 − timeLost)
 * hours = minutes ÷ 60
 * ```
 * @units picks; picks a minute; a percentage lost → hours
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source common-practice
 * @example hoursToWeave({ picks: 9000, picksPerMinute: 20, timeLost: percentLost(25) }) // 10
 */
export const hoursToWeave: Calculation<HoursToWeaveInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "hoursToWeave",
  inputs: {
    picks: whole("picks", "to throw", { atLeast: 1 }),
    picksPerMinute: plainNumber("picks a minute", "that the weaver throws while weaving, counted over some minutes"),
    timeLost: loss("of the whole time at the loom"),
  },
  formula: `
    minutes = picks ÷ picksPerMinute ÷ (1 − timeLost)
    hours = minutes ÷ 60`,
  result: plainNumber("hours", "at the loom"),
  slips: [
    {
      says: "adds the lost part to the time of weaving",
      instead: "minutes = picks ÷ picksPerMinute × (1 + timeLost)",
    },
  ],
  source: commonPractice,
}));
