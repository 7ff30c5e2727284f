import { calculation, drawnAs, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { EndsPerLength } from "../../units/index.js";

export interface SettForWeaveInput {
  /** Of the cloth there is. */
  readonly sett: EndsPerLength;
  /** Of the weave there is. */
  readonly ends: number;
  /** Of the weave there is. */
  readonly intersections: number;
  /** Of the new weave. */
  readonly newEnds: number;
  /** Of the new weave. */
  readonly newIntersections: number;
}

/**
 * Sett of the same yarn in another weave, just as firm.
 *
 * @formula
 * ```text
 * part = ends ÷ (ends + intersections)
 * newPart = newEnds ÷ (newEnds + newIntersections)
 * newSett = sett × newPart ÷ part
 * ```
 * @units a sett; ends in one weave repeat; intersections in one weave repeat → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example settForWeave({ sett: endsPerInch(24), ends: 2, intersections: 2, newEnds: 4, newIntersections: 2 }).in(endsPerInch) // 32
 */
export const settForWeave: Calculation<SettForWeaveInput, EndsPerLength> = /* @__PURE__ */ calculation(() => ({
  name: "settForWeave",
  inputs: {
    sett: positive(EndsPerLength, "of the cloth there is"),
    ends: drawnAs(whole("ends in one weave repeat", "of the weave there is", { atLeast: 1 }), "as given"),
    intersections: drawnAs(
      whole("intersections in one weave repeat", "of the weave there is", { atLeast: 1 }),
      "as given",
    ),
    newEnds: drawnAs(whole("ends in one weave repeat", "of the new weave", { atLeast: 1 }), "as given"),
    newIntersections: drawnAs(
      whole("intersections in one weave repeat", "of the new weave", { atLeast: 1 }),
      "as given",
    ),
  },
  formula: `
    part = ends ÷ (ends + intersections)
    newPart = newEnds ÷ (newEnds + newIntersections)
    newSett = sett × newPart ÷ part`,
  result: positive(EndsPerLength, "of the new cloth"),
  resultIn: "sett",
  source: taylor1909,
}));
