import { added, atLeastZero, calculation, drawnAs, plainNumber, positive } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { gateTextile } from "../../sources/index.js";
import { Length } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

export interface WaveHeightInput {
  /** Of the threads it crosses. */
  readonly spacing: Length;
  /** To the length of the cloth, of this thread. */
  readonly crimp: Addition;
  /** 4/3 or 1.36. */
  readonly factor: number;
}

/**
 * Height of the wave of a thread in plain weave by a short rule, near enough only for a crimp of about 11 to 14 %.
 *
 * Two factors are in use, 4/3 and 1.36; the second fits a crimp of 7 to 9.5 %.
 *
 * @formula height = factor × spacing × √crimp
 * @units a length; a percentage added; factor of the rule → a length
 * @exactness rule of thumb, from plain numbers
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", one error for all faulty fields
 * @source gate-textile
 * @example waveHeight({ spacing: millimetres(0.4), crimp: percentAdded(9), factor: 1.5 }).in(millimetres) // 0.18
 */
export const waveHeight: Calculation<WaveHeightInput, Length> = /* @__PURE__ */ calculation(() => ({
  name: "waveHeight",
  inputs: {
    spacing: positive(Length, "of the threads it crosses"),
    crimp: added("to the length of the cloth, of this thread"),
    factor: drawnAs(plainNumber("factor of the rule", "4/3 or 1.36"), "as given"),
  },
  formula: "height = factor × spacing × √crimp",
  result: atLeastZero(Length, "between the middle of the thread at its highest and at its lowest"),
  source: gateTextile,
}));
