import { calculation, listOf, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { taylor1909 } from "../../sources/index.js";

export interface DentsInSleyInput {
  /** That follow each other, sleyed alike. */
  readonly dents: readonly number[];
}

/**
 * Dents that a sleying takes, the empty ones counted.
 *
 * @formula dentsInAll = Σdents
 * @units a list, each dents → dents
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "empty", one error for all faulty fields
 * @source taylor-1909
 * @example dentsInSley({ dents: [24, 25] }) // 49
 */
export const dentsInSley: Calculation<DentsInSleyInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "dentsInSley",
  inputs: {
    dents: listOf(whole("dents", "that follow each other, sleyed alike", { atLeast: 1 })),
  },
  formula: "dentsInAll = Σdents",
  result: whole("dents", "from the first to the last", { atLeast: 1 }),
  source: taylor1909,
}));
