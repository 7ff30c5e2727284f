import { check, judged } from "../refusal/check.js";
import type { LabColour } from "./lab-of.js";

export interface ColourDifferenceInput {
  /** As `labOf` gives it, or as measured: lightness from 0 to 100, then the two hues. */
  readonly one: LabColour;
  readonly other: LabColour;
}

const aLab = /* @__PURE__ */ judged(
  "a colour as lightness from 0 to 100 and two numbers",
  'Make it with labOf("#a03020").',
  (value) => {
    const parts: readonly unknown[] = Array.isArray(value) ? value : [];
    const numbers = parts.filter((part) => typeof part === "number");
    const [lightness = 0, ...hues] = numbers;
    if (parts.length !== 3 || numbers.length !== 3) return "wrong-kind";
    if (!numbers.every(Number.isFinite)) return "not-a-number";
    return (lightness < 0 || lightness > 100 || hues.some((hue) => Math.abs(hue) > 1000)) && "out-of-range";
  },
  { kind: "colour", example: "[50, 2.5, 0]" },
);

const TURN = 360;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const cosine = (degrees: number): number => Math.cos(radians(degrees));
const faded = (chroma: number): number => Math.sqrt(chroma ** 7 / (chroma ** 7 + 25 ** 7));

/** Hue in degrees from 0 up to a whole turn; a grey has none and counts as 0. */
function hueOf(a: number, b: number): number {
  return a === 0 && b === 0 ? 0 : ((Math.atan2(b, a) * 180) / Math.PI + TURN) % TURN;
}

/** From the one hue to the other the shorter way round. */
function hueStep(from: number, to: number): number {
  const step = to - from;
  return Math.abs(step) <= TURN / 2 ? step : step - Math.sign(step) * TURN;
}

/** Half way between two hues the shorter way round. */
function middleHue(one: number, other: number): number {
  const sum = one + other;
  if (Math.abs(one - other) <= TURN / 2) return sum / 2;
  return (sum < TURN ? sum + TURN : sum - TURN) / 2;
}

/**
 * How different two colours look, CIEDE2000 with all its weights 1: Sharma, Wu and Dalal, The CIEDE2000 color-difference
 * formula, Color Research and Application 30(1), 2005, equations 2 to 22. About 1 can just be told apart side by side.
 *
 * @throws StripeError for what is no colour of three finite numbers
 * @example colourDifference({ one: [50, 2.5, 0], other: [50, 0, -2.5] }).toFixed(4) // "4.3065"
 */
export function colourDifference(input: ColourDifferenceInput): number {
  check("colourDifference", input, { one: aLab, other: aLab });
  const { one, other } = input;
  const [[l1, a1, b1], [l2, a2, b2]] = [one, other];
  const stretch = 1.5 - 0.5 * faded((Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2);
  const [red1, red2] = [a1 * stretch, a2 * stretch];
  const [chroma1, chroma2] = [Math.hypot(red1, b1), Math.hypot(red2, b2)];
  const [hue1, hue2] = [hueOf(red1, b1), hueOf(red2, b2)];
  const isGrey = chroma1 * chroma2 === 0;
  const hueApart = isGrey ? 0 : 2 * Math.sqrt(chroma1 * chroma2) * Math.sin(radians(hueStep(hue1, hue2)) / 2);
  const hue = isGrey ? hue1 + hue2 : middleHue(hue1, hue2);
  const chroma = (chroma1 + chroma2) / 2;
  const fromMiddle = ((l1 + l2) / 2 - 50) ** 2;
  const byHue =
    1 - 0.17 * cosine(hue - 30) + 0.24 * cosine(2 * hue) + 0.32 * cosine(3 * hue + 6) - 0.2 * cosine(4 * hue - 63);
  const lightnessPart = (l2 - l1) / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle));
  const chromaPart = (chroma2 - chroma1) / (1 + 0.045 * chroma);
  const huePart = hueApart / (1 + 0.015 * chroma * byHue);
  const turned = -2 * faded(chroma) * Math.sin(radians(60 * Math.exp(-(((hue - 275) / 25) ** 2))));
  return Math.sqrt(lightnessPart ** 2 + chromaPart ** 2 + huePart ** 2 + turned * chromaPart * huePart);
}
