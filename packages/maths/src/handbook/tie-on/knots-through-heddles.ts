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
  /** Across the thicker of the two threads, pressed together. */
  readonly diameter: Length;
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
 * Whether a knot passes the eye of a heddle that was measured.
 *
 * @param input the eye, what it is made of, the thicker thread across, and the knot
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @source common practice, no source
 * @example
 * const eye = { eyeWidth: millimetres(2), eyeHeight: millimetres(6), eye: "metal", diameter: millimetres("0.5"), knot: "square" };
 * knotsThroughHeddles(eye).verdict // "passes"
 */
export function knotsThroughHeddles(input: KnotsThroughHeddlesInput): KnotsThroughHeddles {
  const declared = {
    eyeWidth: positive(Length, "of the eye, measured"),
    eyeHeight: positive(Length, "of the eye, measured"),
    eye: oneOf(["metal", "cord"], "what the eye is made of"),
    diameter: positive(Length, "across the thicker of the two threads, pressed together"),
    knot: oneOf(Object.keys(KNOTS) as Knot[], "how each old end is joined to its new one"),
  };
  readInputs("knotsThroughHeddles", declared, input);
  const { least, across } = KNOTS[input.knot];
  const isCord = input.eye === "cord";
  const widthNeeded = times(input.diameter, isCord ? 0 : least);
  const heightNeeded = times(input.diameter, isCord ? CORD_HEIGHT : across);
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
