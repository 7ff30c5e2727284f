import { calculation, drawnAs, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { oddWeavings } from "../../sources/index.js";

export interface DentsInPartsInput {
  /** Marked on the reed. */
  readonly parts: number;
  /** 20, 30 or 48 by the custom of the place. */
  readonly dentsInPart: number;
}

/**
 * Dents in a whole reed that is marked in parts, as old reeds are; no reed number until its width is known.
 *
 * @formula dents = parts × dentsInPart
 * @units parts; dents in each part → dents
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source odd-weavings
 * @example dentsInParts({ parts: 13, dentsInPart: 20 }) // 260
 */
export const dentsInParts: Calculation<DentsInPartsInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "dentsInParts",
  inputs: {
    parts: whole("parts", "marked on the reed", { atLeast: 1 }),
    dentsInPart: drawnAs(
      whole("dents in each part", "20, 30 or 48 by the custom of the place", { atLeast: 1 }),
      [20, 30, 48],
    ),
  },
  formula: "dents = parts × dentsInPart",
  result: whole("dents", "in the whole reed", { atLeast: 1 }),
  source: oddWeavings,
}));
