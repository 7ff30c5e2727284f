import { atLeastZero, positive, readInputs } from "../../engine/formula/index.js";
import { Decimal, EXACT_STEP } from "../../engine/numbers.js";
import { described, genuineUnit, inUnit } from "../../engine/quantity/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { refuse } from "../../engine/refusal.js";
import { Length } from "../../units/index.js";
import { peirceThread } from "./peirce-thread.js";
import type { PeirceThread } from "./peirce-thread.js";

export interface ThreadFromHeightInput {
  /** Of the threads it crosses, from middle to middle. */
  readonly spacing: Length;
  /** Between the middle of the thread at its highest and at its lowest. */
  readonly height: Length;
  /** Of a warp and a weft thread together, both taken as round. */
  readonly diameters: Length;
}

/**
 * A thread of a plain weave from the height of its wave, by the closed form of Peirce's equations: round threads that
 * neither flatten nor resist bending.
 *
 * With p, h and D for the three inputs and R² = p² + (D − h)²: the angle is asin(D ÷ R) − atan((D − h) ÷ p), the thread
 * √(R² − D²) + D × angle. Eliminated by us from the two equations of the source. Where R is D the threads are jammed.
 *
 * @throws QuantityError "no-answer" where the threads would be closer than jammed, or the wave higher than both threads
 * @source balasubramanian-cloth
 * @example threadFromHeight({ spacing: millimetres(1), height: millimetres("0.5"), diameters: millimetres(1) }).angle // 36.869…
 */
export function threadFromHeight(input: ThreadFromHeightInput): PeirceThread {
  const inputs = {
    spacing: positive(Length, "of the threads it crosses"),
    height: atLeastZero(Length, "of its wave"),
    diameters: positive(Length, "of a warp and a weft thread together"),
  };
  readInputs("threadFromHeight", inputs, input);
  const unit = genuineUnit(input.spacing) as Unit<"length">;
  const [spacing, height, diameters] = [input.spacing, input.height, input.diameters].map(
    (length) => new Decimal(inUnit(length, unit).value),
  ) as [Decimal, Decimal, Decimal];
  const under = diameters.minus(height);
  const reach = spacing.pow(2).plus(under.pow(2));
  const free = reach.minus(diameters.pow(2));
  if (free.lt(diameters.pow(2).times(`-${EXACT_STEP}`)) || under.isNegative()) {
    refuse(
      "no-answer",
      ["threadFromHeight", under.isNegative() ? "height" : "spacing"],
      under.isNegative() ? "a wave no higher than both threads" : "threads no closer than jammed",
      described(under.isNegative() ? input.height : input.spacing),
      "Round threads of these diameters cannot lie so: look at the diameters, the spacing and the height.",
    );
  }
  // The two angles are one here, but not to the last of forty digits.
  if (height.isZero()) return peirceThread(unit, spacing, { angle: height, height, length: spacing });
  const straight = Decimal.max(0, free).sqrt();
  const angle = Decimal.min(1, diameters.div(reach.sqrt())).asin().minus(under.div(spacing).atan());
  return peirceThread(unit, spacing, { angle, height, length: straight.plus(diameters.times(angle)) });
}
