import { calculation, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { brooks1892 } from "../../sources/index.js";
import { EndsPerLength, HeddlesPerLength, heddlesPerInch, heddlesPerCentimetre } from "../../units/index.js";

export interface HealdClosenessOfShaftInput {
  /** In the reed. */
  readonly sett: EndsPerLength;
  /** On this shaft in one threading repeat. */
  readonly heddlesInRepeat: number;
  /** On all shafts. */
  readonly endsInRepeat: number;
}

/**
 * Closeness of the heddles on one shaft of a draft that uses its shafts unevenly.
 *
 * @formula closeness = sett × heddlesInRepeat ÷ endsInRepeat
 * @units a sett; heddles; ends in one threading repeat → a heald number
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source brooks-1892
 * @example healdClosenessOfShaft({ sett: endsPerInch(60), heddlesInRepeat: 4, endsInRepeat: 12 }).in(stockportHeald) // 80
 */
export const healdClosenessOfShaft: Calculation<HealdClosenessOfShaftInput, HeddlesPerLength> =
  /* @__PURE__ */ calculation(() => ({
    name: "healdClosenessOfShaft",
    inputs: {
      sett: positive(EndsPerLength, "in the reed"),
      heddlesInRepeat: whole("heddles", "on this shaft in one threading repeat", { atLeast: 1 }),
      endsInRepeat: whole("ends in one threading repeat", "on all shafts", { atLeast: 1 }),
    },
    formula: "closeness = sett × heddlesInRepeat ÷ endsInRepeat",
    result: positive(HeddlesPerLength, "on this shaft"),
    resultIn: [heddlesPerInch, heddlesPerCentimetre],
    source: brooks1892,
  }));
