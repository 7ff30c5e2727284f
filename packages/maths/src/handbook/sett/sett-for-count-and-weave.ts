import { calculation, drawnAs, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { EndsPerLength, IndirectCount } from "../../units/index.js";

export interface SettForCountAndWeaveInput {
  /** Of the cloth there is. */
  readonly sett: EndsPerLength;
  /** Of the yarn in it. */
  readonly count: IndirectCount;
  /** Of the other yarn. */
  readonly newCount: IndirectCount;
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
 * Sett of another yarn in another weave, just as firm: the two rules for one change taken together, by us.
 *
 * @formula
 * ```text
 * part = ends ÷ (ends + intersections)
 * newPart = newEnds ÷ (newEnds + newIntersections)
 * newSett = sett × newPart ÷ part × √(newCount ÷ count)
 * ```
 * @units a sett; an indirect count; ends in one weave repeat; intersections in one weave repeat → a sett
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example settForCountAndWeave({ sett: endsPerInch(24), count: cottonCount(16), newCount: cottonCount(25), ends: 2, intersections: 2, newEnds: 4, newIntersections: 2 }).in(endsPerInch) // 40
 */
export const settForCountAndWeave: Calculation<SettForCountAndWeaveInput, EndsPerLength> = /* @__PURE__ */ calculation(
  () => ({
    name: "settForCountAndWeave",
    inputs: {
      sett: positive(EndsPerLength, "of the cloth there is"),
      count: positive(IndirectCount, "of the yarn in it"),
      newCount: positive(IndirectCount, "of the other yarn"),
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
    newSett = sett × newPart ÷ part × √(newCount ÷ count)`,
    result: positive(EndsPerLength, "of the new cloth"),
    resultIn: "sett",
    source: taylor1909,
  }),
);
