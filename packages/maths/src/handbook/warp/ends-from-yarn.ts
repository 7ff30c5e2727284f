import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { bergdala } from "../../sources/index.js";
import { Length } from "../../units/index.js";

export interface EndsFromYarnInput {
  /** At hand. */
  readonly yarn: Length;
  /** Of every end, loom waste counted in. */
  readonly warpLength: Length;
}

/**
 * Ends of a given length that the yarn at hand allows.
 *
 * @formula ends = roundDown(yarn ÷ warpLength)
 * @units a length → ends
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source bergdala
 * @example endsFromYarn({ yarn: metres(720), warpLength: metres(12) }) // 60
 */
export const endsFromYarn: Calculation<EndsFromYarnInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsFromYarn",
  inputs: {
    yarn: positive(Length, "at hand"),
    warpLength: positive(Length, "of every end, loom waste counted in"),
  },
  formula: "ends = roundDown(yarn ÷ warpLength)",
  result: whole("ends", "that are whole", { atLeast: 0 }),
  source: bergdala,
}));
