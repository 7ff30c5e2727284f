import { added, plainNumber, positive, readInputs } from "../../engine/formula/index.js";
import type { ReportStep } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { Decimal, kept } from "../../engine/numbers.js";
import { compare, described, difference, genuineUnit, inUnit, sign, sum } from "../../engine/quantity/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { refuse } from "../../engine/refusal.js";
import { Length, percentAdded } from "../../units/index.js";
import type { Addition } from "../../units/index.js";
import type { PeirceClothInput } from "./peirce-cloth.js";
import { waveHeight } from "./wave-height.js";
import type { WaveHeightInput } from "./wave-height.js";

export interface ClothByShortRuleInput extends PeirceClothInput {
  /** Of the rule: 4/3 or 1.36. */
  readonly factor: number;
}

export interface ClothByShortRule {
  readonly warpHeight: Length;
  readonly weftHeight: Length;
  readonly weftCrimp: Addition;
  /** Through the cloth, where it is thickest. */
  readonly thickness: Length;
  readonly steps: readonly ReportStep<WaveHeightInput>[];
}

/**
 * A plain weave from the crimp of its warp by the short rule of examinations; `peirceCloth` does the same in full.
 *
 * @throws QuantityError "no-answer" where the warp alone would stand higher than both threads
 * @source gate-tf
 * @example
 * const input = { endSpacing: millimetres("0.4"), pickSpacing: millimetres("0.4"), warpDiameter: millimetres("0.2"), weftDiameter: millimetres("0.3"), warpCrimp: percentAdded(9), factor: 1.5 };
 * clothByShortRule(input).weftHeight.in(millimetres) // 0.32
 */
export function clothByShortRule(input: ClothByShortRuleInput): ClothByShortRule {
  const inputs = {
    endSpacing: positive(Length, "of the ends"),
    pickSpacing: positive(Length, "of the picks"),
    warpDiameter: positive(Length, "taken as round"),
    weftDiameter: positive(Length, "taken as round"),
    warpCrimp: added("to the length of the cloth"),
    factor: plainNumber("factor of the rule", "4/3 or 1.36"),
  };
  readInputs("clothByShortRule", inputs, input);
  const { endSpacing, pickSpacing, warpDiameter, weftDiameter, warpCrimp, factor } = input;
  const step = { spacing: pickSpacing, crimp: warpCrimp, factor };
  const warpHeight = waveHeight(step);
  const weftHeight = difference(sum(warpDiameter, weftDiameter), warpHeight);
  if (sign(weftHeight) < 0) {
    refuse(
      "no-answer",
      ["clothByShortRule", "warpCrimp"],
      "a warp that stands no higher than both threads",
      described(warpCrimp),
      "Look at the diameters, the picks and the crimp.",
    );
  }
  const unit = genuineUnit(endSpacing) as Unit<"length">;
  const root = new Decimal(inUnit(weftHeight, unit).value).div(endSpacing.value).div(factor);
  const [throughWarp, throughWeft] = [sum(warpHeight, warpDiameter), sum(weftHeight, weftDiameter)];
  return frozen({
    warpHeight,
    weftHeight,
    weftCrimp: percentAdded(kept(root.times(root).times(100)).toFixed()),
    thickness: compare(throughWarp, throughWeft) < 0 ? throughWeft : throughWarp,
    steps: [{ calculation: waveHeight, input: step }],
  });
}
