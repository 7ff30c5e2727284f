import { atLeastZero, calculation, loss } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface HemAtLoomInput {
  /** Turned under at each end of a piece. */
  readonly hemEachEnd: Length;
  /** Of the cloth, from weaving tension to finished. */
  readonly loomToFinished: Loss;
}

/**
 * Length to weave for one hem, measured on the cloth at weaving tension.
 *
 * @formula hemAtLoom = hemEachEnd ÷ (1 − loomToFinished)
 * @units a length; a percentage lost → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source cnch-2016
 * @example hemAtLoom({ hemEachEnd: inches("1.125"), loomToFinished: percentLost(10) }).in(inches) // 1.25
 */
export const hemAtLoom: Calculation<HemAtLoomInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "hemAtLoom",
  inputs: {
    hemEachEnd: atLeastZero(Length, "turned under at each end of a piece"),
    loomToFinished: loss("of the cloth, from weaving tension to finished"),
  },
  formula: "hemAtLoom = hemEachEnd ÷ (1 − loomToFinished)",
  result: atLeastZero(Length, "of cloth at weaving tension"),
  source: cnch2016,
}));
