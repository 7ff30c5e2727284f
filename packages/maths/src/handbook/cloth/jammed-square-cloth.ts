import { positive, readInputs } from "../../engine/formula/index.js";
import { Decimal, kept } from "../../engine/numbers.js";
import { genuineUnit, inUnit, makeQuantity, times } from "../../engine/quantity/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { Length, endsPerInch, inches } from "../../units/index.js";
import type { EndsPerLength } from "../../units/index.js";
import type { PeirceThread } from "./peirce-thread.js";
import { threadFromHeight } from "./thread-from-height.js";

export interface JammedSquareClothInput {
  /** Of warp and weft alike, taken as round. */
  readonly diameter: Length;
}

export interface JammedSquareCloth {
  /** From the middle of one thread to the next, in warp and weft. */
  readonly spacing: Length;
  readonly ends: EndsPerLength;
  readonly thread: PeirceThread;
  readonly thickness: Length;
}

/**
 * The closest plain weave of round threads, warp and weft alike: nothing closer can be woven of them.
 *
 * @throws QuantityError as any calculation does
 * @source balasubramanian-cloth
 * @example jammedSquareCloth({ diameter: millimetres("0.5") }).thread.crimp.in(percentAdded) // 20.919…
 */
export function jammedSquareCloth(input: JammedSquareClothInput): JammedSquareCloth {
  readInputs("jammedSquareCloth", { diameter: positive(Length, "of warp and weft alike") }, input);
  const { diameter } = input;
  const unit = genuineUnit(diameter) as Unit<"length">;
  const apart = new Decimal(3).sqrt().times(diameter.value);
  const spacing = makeQuantity(unit, kept(apart));
  const thickness = times(diameter, 2);
  return Object.freeze({
    spacing,
    ends: endsPerInch(kept(new Decimal(1).div(inUnit(spacing, inches).value)).toFixed()),
    thread: threadFromHeight({ spacing, height: diameter, diameters: thickness }),
    thickness,
  });
}
