import { calculation, plainNumber, positive, positiveEither, reckonedIn } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wovenFabricCalculation } from "../../sources/index.js";
import {
  EndsPerLength,
  IndirectCount,
  PicksPerLength,
  cottonCount,
  endsPerInch,
  picksPerInch,
} from "../../units/index.js";

export interface CoverFactorByPeirceInput {
  /** Across or along the cloth. */
  readonly threads: EndsPerLength | PicksPerLength;
  /** Of their yarn. */
  readonly count: IndirectCount;
}

/**
 * Cover factor on the scale of Peirce: 28 where threads of cotton lie touching.
 *
 * @formula coverFactor = threads ÷ √count
 * @units ends or picks in a length, reckoned in ends per inch or picks per inch; an indirect count, reckoned in cotton count → on the scale of Peirce
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source woven-fabric-calculation
 * @example coverFactorByPeirce({ threads: endsPerInch(60), count: cottonCount(25) }) // 12
 */
export const coverFactorByPeirce: Calculation<CoverFactorByPeirceInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "coverFactorByPeirce",
  inputs: {
    threads: reckonedIn(
      positiveEither(EndsPerLength, PicksPerLength, "ends or picks in a length", "across or along the cloth"),
      [endsPerInch, picksPerInch],
    ),
    count: reckonedIn(positive(IndirectCount, "of their yarn"), [cottonCount]),
  },
  formula: "coverFactor = threads ÷ √count",
  result: plainNumber("on the scale of Peirce", "of one set of threads"),
  source: wovenFabricCalculation,
}));
