import { atLeastZero, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { woodhouseKilgour1921 } from "../../sources/index.js";
import { DirectCount, Length, Mass } from "../../units/index.js";

export interface YarnLengthDirectInput {
  /** Of the yarn, the tube not counted. */
  readonly mass: Mass;
  /** Of the finished thread. */
  readonly count: DirectCount;
}

/**
 * Length of yarn in a mass of it, from its direct count.
 *
 * @formula length = mass ÷ count
 * @units a mass; a direct count → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source woodhouse-kilgour-1921
 * @example yarnLengthDirect({ mass: pounds(8), count: juteCount(8) }).in(yards) // 14400
 */
export const yarnLengthDirect: Calculation<YarnLengthDirectInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "yarnLengthDirect",
  inputs: {
    mass: atLeastZero(Mass, "of the yarn, the tube not counted"),
    count: positive(DirectCount, "of the finished thread"),
  },
  formula: "length = mass ÷ count",
  result: atLeastZero(Length, "of yarn in that mass"),
  source: woodhouseKilgour1921,
}));
