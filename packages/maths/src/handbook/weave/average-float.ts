import { calculation, drawnAs, plainNumber, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";

export interface AverageFloatInput {
  /** That a thread crosses. */
  readonly threads: number;
  /** Where that thread passes between face and back. */
  readonly intersections: number;
}

/**
 * Average float of a weave: threads passed over or under between one intersection and the next.
 *
 * @formula averageFloat = threads ÷ intersections
 * @units threads in one weave repeat; intersections in one weave repeat → threads
 * @exactness to 34 digits
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source gate-textile
 * @example averageFloat({ threads: 5, intersections: 2 }) // 2.5
 */
export const averageFloat: Calculation<AverageFloatInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "averageFloat",
  inputs: {
    threads: drawnAs(whole("threads in one weave repeat", "that a thread crosses", { atLeast: 1 }), "as given"),
    intersections: drawnAs(
      whole("intersections in one weave repeat", "where that thread passes between face and back", {
        atLeast: 1,
      }),
      "as given",
    ),
  },
  formula: "averageFloat = threads ÷ intersections",
  result: plainNumber("threads", "to a float, on average"),
  source: gateTextile,
}));
