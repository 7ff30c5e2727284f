import { calculation, drawnAs, positive, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";
import { IndirectCount, Mass } from "../../units/index.js";

export interface CountForWeightAndWeaveInput {
  /** Of the yarn in the cloth there is. */
  readonly count: IndirectCount;
  /** Of a piece of that cloth. */
  readonly mass: Mass;
  /** Of a piece of the new cloth, of the same size. */
  readonly newMass: Mass;
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
 * Count of the yarn for another weight in another weave, just as firm: the two rules for one change taken together, by us.
 *
 * @formula
 * ```text
 * part = ends ÷ (ends + intersections)
 * newPart = newEnds ÷ (newEnds + newIntersections)
 * times = mass × newPart ÷ (newMass × part)
 * newCount = count × times × times
 * ```
 * @units an indirect count; a mass; ends in one weave repeat; intersections in one weave repeat → an indirect count
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source taylor-1909
 * @example countForWeightAndWeave({ count: cottonCount(45), mass: pounds(10), newMass: pounds(15), ends: 2, intersections: 2, newEnds: 2, newIntersections: 2 }).in(cottonCount) // 20
 */
export const countForWeightAndWeave: Calculation<CountForWeightAndWeaveInput, IndirectCount> =
  /* @__PURE__ */ calculation(() => ({
    name: "countForWeightAndWeave",
    inputs: {
      count: positive(IndirectCount, "of the yarn in the cloth there is"),
      mass: positive(Mass, "of a piece of that cloth"),
      newMass: positive(Mass, "of a piece of the new cloth, of the same size"),
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
    times = mass × newPart ÷ (newMass × part)
    newCount = count × times × times`,
    result: positive(IndirectCount, "of the new yarn"),
    resultIn: "count",
    source: taylor1909,
  }));
