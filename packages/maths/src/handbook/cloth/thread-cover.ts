import { calculation, drawnAs, positive, proportionOf, share } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { Length, percentOf } from "../../units/index.js";
import type { Share } from "../../units/index.js";

export interface ThreadCoverInput {
  /** Of the yarn, round. */
  readonly diameter: Length;
  /** From the middle of one thread to the next. */
  readonly spacing: Length;
  /** Of the diameter, left as the height of the flattened thread; all of it where round. */
  readonly flattening: Share;
}

/**
 * Share of the cloth that one set of threads hides, from their diameter and spacing, flattened as they lie.
 *
 * @formula
 * ```text
 * width = diameter ÷ flattening
 * cover = width ÷ spacing
 * ```
 * @units a length; a share in percent → a share in percent
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example threadCover({ diameter: millimetres(0.4), spacing: millimetres(1), flattening: percentOf(80) }).in(percentOf) // 50
 */
export const threadCover: Calculation<ThreadCoverInput, Share> = /* @__PURE__ */ calculation(() => ({
  name: "threadCover",
  inputs: {
    diameter: positive(Length, "of the yarn, round"),
    spacing: positive(Length, "from the middle of one thread to the next"),
    flattening: drawnAs(
      share("of the diameter, left as the height of the flattened thread; all of it where round"),
      "as given",
    ),
  },
  formula: `
    width = diameter ÷ flattening
    cover = width ÷ spacing`,
  result: proportionOf("of the cloth, hidden by these threads"),
  resultIn: [percentOf],
  source: gateTextile,
}));
