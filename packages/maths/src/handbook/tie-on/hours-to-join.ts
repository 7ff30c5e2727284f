import { calculation, plainNumber, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { avlHomeLoom } from "../../sources/index.js";

export interface HoursToJoinInput {
  /** To tie. */
  readonly knots: number;
  /** That the weaver ties, counted on a first hundred. */
  readonly knotsPerHour: number;
}

/**
 * Hours of tying.
 *
 * @formula hours = knots ÷ knotsPerHour
 * @units knots; knots an hour → hours
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source avl-home-loom
 * @example hoursToJoin({ knots: 450, knotsPerHour: 225 }) // 2
 */
export const hoursToJoin: Calculation<HoursToJoinInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "hoursToJoin",
  inputs: {
    knots: whole("knots", "to tie", { atLeast: 1 }),
    knotsPerHour: plainNumber("knots an hour", "that the weaver ties, counted on a first hundred"),
  },
  formula: "hours = knots ÷ knotsPerHour",
  result: plainNumber("hours", "of tying alone, without rests"),
  source: avlHomeLoom,
}));
