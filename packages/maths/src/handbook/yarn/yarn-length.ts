import { atLeastZero, calculation, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { davis1920 } from "../../sources/index.js";
import { IndirectCount, Length, Mass } from "../../units/index.js";

export interface YarnLengthInput {
  /** Of the yarn, the tube not counted. */
  readonly mass: Mass;
  /** Of the finished thread. */
  readonly count: IndirectCount;
}

/**
 * Length of yarn in a mass of it, from its indirect count.
 *
 * @formula length = mass × count
 * @units a mass; an indirect count → a length
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source davis-1920
 * @example yarnLength({ mass: ounces(8), count: cottonCount(4) }).in(yards) // 1680
 */
export const yarnLength: Calculation<YarnLengthInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "yarnLength",
  inputs: {
    mass: atLeastZero(Mass, "of the yarn, the tube not counted"),
    count: positive(IndirectCount, "of the finished thread"),
  },
  formula: "length = mass × count",
  result: atLeastZero(Length, "of yarn in that mass"),
  forUse: "up",
  source: davis1920,
}));
