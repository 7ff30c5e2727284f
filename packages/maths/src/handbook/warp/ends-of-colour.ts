import { calculation, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { wolfensberger1921 } from "../../sources/index.js";

export interface EndsOfColourInput {
  /** Of this colour in one pattern. */
  readonly endsInPattern: number;
  /** That stand whole in the width. */
  readonly patterns: number;
  /** Of this colour in the part pattern and the selvedges. */
  readonly endsInPart: number;
}

/**
 * Ends of one colour in a striped warp: those of the whole patterns, and those of the part that closes it.
 *
 * @formula ends = endsInPattern × patterns + endsInPart
 * @units ends; patterns → ends
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source wolfensberger-1921
 * @example endsOfColour({ endsInPattern: 240, patterns: 7, endsInPart: 0 }) // 1680
 */
export const endsOfColour: Calculation<EndsOfColourInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsOfColour",
  inputs: {
    endsInPattern: whole("ends", "of this colour in one pattern", { atLeast: 0 }),
    patterns: whole("patterns", "that stand whole in the width", { atLeast: 0 }),
    endsInPart: whole("ends", "of this colour in the part pattern and the selvedges", { atLeast: 0 }),
  },
  formula: "ends = endsInPattern × patterns + endsInPart",
  result: whole("ends", "of this colour", { atLeast: 0 }),
  source: wolfensberger1921,
}));
