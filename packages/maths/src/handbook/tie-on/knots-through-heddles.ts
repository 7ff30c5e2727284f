import { oneOf, positive, readInputs } from "../../engine/formula/index.js";
import { compare, times } from "../../engine/quantity/index.js";
import { Length } from "../../units/index.js";
import { KNOTS } from "./knot.js";
import type { Knot } from "./knot.js";

export interface KnotsThroughHeddlesInput {
  /** As measured; nobody prints what eyes are. */
  readonly eyeWidth: Length;
  readonly eyeHeight: Length;
  /** Cord eyes give way sideways. */
  readonly eye: "metal" | "cord";
  /** Across the thickest old thread, pressed together. */
  readonly oldDiameter: Length;
  /** Across the thickest new thread, pressed together. */
  readonly newDiameter: Length;
  readonly knot: Knot;
}

export interface KnotsThroughHeddles {
  readonly verdict: "passes" | "does not pass untouched";
  /** What the knot needs of the eye. */
  readonly widthNeeded: Length;
  readonly heightNeeded: Length;
  readonly says: string;
}

/** What an eye of cord must be high, in diameters, whatever the knot. */
const CORD_HEIGHT = 5;

/**
 * Whether a knot passes the eye of a heddle that was measured; the thicker of the two threads decides.
 *
 * @param input the eye, what it is made of, the thickest old and new thread across, and the knot
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @source common practice, no source
 * @example
 * const eye = { eyeWidth: millimetres(2), eyeHeight: millimetres(6), eye: "metal", knot: "square" };
 * knotsThroughHeddles({ ...eye, oldDiameter: millimetres("0.4"), newDiameter: millimetres("0.5") }).verdict // "passes"
 */
export function knotsThroughHeddles(input: KnotsThroughHeddlesInput): KnotsThroughHeddles {
  const declared = {
    eyeWidth: positive(Length, "of the eye, measured"),
    eyeHeight: positive(Length, "of the eye, measured"),
    eye: oneOf(["metal", "cord"], "what the eye is made of"),
    oldDiameter: positive(Length, "across the thickest old thread, pressed together"),
    newDiameter: positive(Length, "across the thickest new thread, pressed together"),
    knot: oneOf(Object.keys(KNOTS) as Knot[], "how each old end is joined to its new one"),
  };
  readInputs("knotsThroughHeddles", declared, input);
  const { least, across } = KNOTS[input.knot];
  const { oldDiameter, newDiameter } = input;
  const diameter = compare(oldDiameter, newDiameter) > 0 ? oldDiameter : newDiameter;
  const isCord = input.eye === "cord";
  const widthNeeded = times(diameter, isCord ? 0 : least);
  const heightNeeded = times(diameter, isCord ? CORD_HEIGHT : across);
  const passes = compare(input.eyeWidth, widthNeeded) >= 0 && compare(input.eyeHeight, heightNeeded) >= 0;
  const verdict = passes ? "passes" : "does not pass untouched";
  const needs = isCord
    ? `an eye ${String(heightNeeded)} high`
    : `an eye ${String(widthNeeded)} wide and ${String(heightNeeded)} high`;
  return Object.freeze({
    verdict,
    widthNeeded,
    heightNeeded,
    says: `A hard knot of this thread needs ${needs}: it ${verdict}. Tie one and draw it through one heddle.`,
  });
}
