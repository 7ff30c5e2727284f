import { added, positive, readInputs } from "../../engine/formula/index.js";
import { Decimal, EXACT_STEP } from "../../engine/numbers.js";
import { described, genuineUnit, inUnit, ratio } from "../../engine/quantity/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { refuse } from "../../engine/refusal.js";
import { Length, percentAdded } from "../../units/index.js";
import type { Addition } from "../../units/index.js";
import { peirceThread } from "./peirce-thread.js";
import type { Bent, PeirceThread } from "./peirce-thread.js";

export interface ThreadFromCrimpInput {
  /** Of the threads it crosses, from middle to middle. */
  readonly spacing: Length;
  /** Of this thread, on the cloth. */
  readonly crimp: Addition;
  /** Of a warp and a weft thread together, both taken as round. */
  readonly diameters: Length;
}

/** Halvings that leave nothing of 40 digits. */
const HALVINGS = 140;

function bentAt(angle: Decimal, length: Decimal, diameters: Decimal): { readonly reach: Decimal; readonly bent: Bent } {
  const straight = length.minus(diameters.times(angle));
  const [sine, cosine] = [angle.sin(), angle.cos()];
  return {
    reach: straight.times(cosine).plus(diameters.times(sine)),
    bent: { angle, length, height: straight.times(sine).plus(diameters.times(new Decimal(1).minus(cosine))) },
  };
}

/**
 * A thread of a plain weave from its crimp, by Peirce's equations, halving between no bend and all of it bent round the
 * threads it crosses.
 *
 * @throws QuantityError "no-answer" for more crimp than round threads so spaced can take up
 * @source balasubramanian-cloth
 * @example threadFromCrimp({ spacing: millimetres(1), crimp: percentAdded(5), diameters: millimetres(1) }).angle // 20.1…
 */
export function threadFromCrimp(input: ThreadFromCrimpInput): PeirceThread {
  const inputs = {
    spacing: positive(Length, "of the threads it crosses"),
    crimp: added("to the length of the cloth"),
    diameters: positive(Length, "of a warp and a weft thread together"),
  };
  readInputs("threadFromCrimp", inputs, input);
  const unit = genuineUnit(input.spacing) as Unit<"length">;
  const spacing = new Decimal(input.spacing.value);
  const diameters = new Decimal(inUnit(input.diameters, unit).value);
  const length = spacing.times(new Decimal(inUnit(input.crimp, percentAdded).value).div(100).plus(1));
  if (length.eq(spacing)) return peirceThread(unit, spacing, { angle: new Decimal(0), height: new Decimal(0), length });
  let [less, more] = [new Decimal(0), length.div(diameters)];
  const most = bentAt(more, length, diameters);
  const nearly = diameters.times(EXACT_STEP);
  let found = most.bent;
  const reaches = most.reach.minus(spacing).lte(nearly);
  if (reaches && most.reach.minus(spacing).lt(nearly.neg())) {
    for (let at = 0; at < HALVINGS; at += 1) {
      const middle = less.plus(more).div(2);
      const { reach, bent } = bentAt(middle, length, diameters);
      if (reach.gt(spacing)) less = middle;
      else more = middle;
      found = bent;
    }
  }
  if (!reaches || found.height.gt(diameters.plus(nearly))) {
    const room = String(ratio(input.spacing, input.diameters));
    refuse(
      "no-answer",
      ["threadFromCrimp", "crimp"],
      `no more crimp than round threads ${room} of both diameters apart can take up`,
      described(input.crimp),
      "Look at the diameters and the spacing; a thread that flattens is not Peirce's.",
    );
  }
  return peirceThread(unit, spacing, found);
}
