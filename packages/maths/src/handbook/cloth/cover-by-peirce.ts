import { calculation, positive, positiveEither, proportionOf, reckonedIn } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import {
  EndsPerLength,
  IndirectCount,
  PicksPerLength,
  cottonCount,
  endsPerInch,
  percentOf,
  picksPerInch,
} from "../../units/index.js";
import type { Share } from "../../units/index.js";

export interface CoverByPeirceInput {
  /** Across or along the cloth. */
  readonly threads: EndsPerLength | PicksPerLength;
  /** Of their yarn. */
  readonly count: IndirectCount;
}

/**
 * Share of the cloth that one set of cotton threads hides, by the diameters of Peirce; more than all of it where they would overlap.
 *
 * @formula cover = threads ÷ (28 × √count)
 * @units ends or picks in a length, reckoned in ends per inch or picks per inch; an indirect count, reckoned in cotton count → a share in percent
 * @exactness rule of thumb, its constants for the units it reckons in
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example coverByPeirce({ threads: endsPerInch(70), count: cottonCount(25) }).in(percentOf) // 50
 */
export const coverByPeirce: Calculation<CoverByPeirceInput, Share> = /* @__PURE__ */ calculation(() => ({
  name: "coverByPeirce",
  inputs: {
    threads: reckonedIn(
      positiveEither(EndsPerLength, PicksPerLength, "ends or picks in a length", "across or along the cloth"),
      [endsPerInch, picksPerInch],
    ),
    count: reckonedIn(positive(IndirectCount, "of their yarn"), [cottonCount]),
  },
  formula: "cover = threads ÷ (28 × √count)",
  result: proportionOf("of the cloth, hidden by these threads"),
  resultIn: [percentOf],
  source: gateTextile,
}));
