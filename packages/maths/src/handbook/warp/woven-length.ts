import { atLeastZero, calculation, loss, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { cnch2016 } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Loss } from "../../units/index.js";

export interface WovenLengthInput {
  /** One piece, washed and hemmed. */
  readonly finishedLength: Length;
  /** Turned under at each end of a piece. */
  readonly hemEachEnd: Length;
  /** Of the cloth, from weaving tension to finished. */
  readonly loomToFinished: Loss;
}

/**
 * Length to weave for one piece, measured on the cloth at weaving tension: the mark of a piece tape.
 *
 * @formula
 * ```text
 * cutLength   = finishedLength + 2 × hemEachEnd
 * wovenLength = cutLength ÷ (1 − loomToFinished)
 * ```
 * @units a length; a percentage lost → a length
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source cnch-2016
 * @example wovenLength({ finishedLength: inches(16), hemEachEnd: inches(1), loomToFinished: percentLost(10) }).in(inches) // 20
 */
export const wovenLength: Calculation<WovenLengthInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "wovenLength",
  inputs: {
    finishedLength: positive(Length, "one piece, washed and hemmed"),
    hemEachEnd: atLeastZero(Length, "turned under at each end of a piece"),
    loomToFinished: loss("of the cloth, from weaving tension to finished"),
  },
  formula: `
    cutLength   = finishedLength + 2 × hemEachEnd
    wovenLength = cutLength ÷ (1 − loomToFinished)`,
  result: positive(Length, "of cloth at weaving tension"),
  forUse: "up",
  source: cnch2016,
}));
