import { calculation, plainNumber, positive, positiveEither, reckonedIn } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wovenFabricCalculation } from "../../sources/index.js";
import {
  DirectCount,
  EndsPerLength,
  PicksPerLength,
  endsPerCentimetre,
  picksPerCentimetre,
  tex,
} from "../../units/index.js";

export interface TexCoverFactorInput {
  /** Across or along the cloth. */
  readonly threads: EndsPerLength | PicksPerLength;
  /** Of their yarn. */
  readonly count: DirectCount;
}

/**
 * Cover factor on the tex scale; a twentieth less than on the scale of Peirce, so the two are never mixed.
 *
 * @formula coverFactor = threads × √count ÷ 10
 * @units ends or picks in a length, reckoned in ends per centimetre or picks per centimetre; a direct count, reckoned in tex → on the tex scale
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source woven-fabric-calculation
 * @example texCoverFactor({ threads: endsPerCentimetre(20), count: tex(36) }) // 12
 */
export const texCoverFactor: Calculation<TexCoverFactorInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "texCoverFactor",
  inputs: {
    threads: reckonedIn(
      positiveEither(EndsPerLength, PicksPerLength, "ends or picks in a length", "across or along the cloth"),
      [endsPerCentimetre, picksPerCentimetre],
    ),
    count: reckonedIn(positive(DirectCount, "of their yarn"), [tex]),
  },
  formula: "coverFactor = threads × √count ÷ 10",
  result: plainNumber("on the tex scale", "of one set of threads"),
  source: wovenFabricCalculation,
}));
