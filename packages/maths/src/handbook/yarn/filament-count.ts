import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { textileNotes } from "../../sources/index.js";
import { DirectCount } from "../../units/index.js";

export interface FilamentCountInput {
  /** Of the whole yarn. */
  readonly count: DirectCount;
  /** In the yarn. */
  readonly filaments: number;
}

/**
 * Count of one filament of a yarn that is marked with its count and its filaments, such as 70 den f34.
 *
 * @formula filament = count ÷ filaments
 * @units a direct count; filaments → a direct count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source textile-notes
 * @example filamentCount({ count: denier(180), filaments: 90 }).in(denier) // 2
 */
export const filamentCount: Calculation<FilamentCountInput, DirectCount> = /* @__PURE__ */ calculation(() => ({
  name: "filamentCount",
  inputs: {
    count: positive(DirectCount, "of the whole yarn"),
    filaments: whole("filaments", "in the yarn", { atLeast: 1 }),
  },
  formula: "filament = count ÷ filaments",
  result: positive(DirectCount, "of one filament"),
  resultIn: "count",
  source: textileNotes,
}));
