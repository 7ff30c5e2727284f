import { checked, judged } from "../refusal/check.js";
import { StripeError } from "../refusal/stripe-error.js";

/** Lightness, and how far from grey towards red (or green) and yellow (or blue): CIE 1976, in the light of D65. */
export type LabColour = readonly [lightness: number, redness: number, yellowness: number];

/** Linear red, green and blue into X, Y and Z: the primaries of IEC 61966-2-1 at full precision. */
const TO_XYZ = [
  [0.4123907992659593, 0.357584339383878, 0.1804807884018343],
  [0.2126390058715102, 0.715168678767756, 0.0721923153607337],
  [0.0193308187155918, 0.119194779794626, 0.9505321522496607],
] as const;

/** D65 by its chromaticity, x 0.3127 and y 0.3290. */
const WHITE = [0.3127 / 0.329, 1, (1 - 0.3127 - 0.329) / 0.329] as const;

function linear(coded: number): number {
  return coded <= 0.04045 ? coded / 12.92 : ((coded + 0.055) / 1.055) ** 2.4;
}

/** The cube root of CIE 1976, straight near black. */
function rooted(share: number): number {
  return share > 216 / 24389 ? Math.cbrt(share) : ((24389 / 27) * share + 16) / 116;
}

const SCREEN = /^#(?:[0-9a-f]{3}|[0-9a-f]{6})$/iu;

const aScreenColour = /* @__PURE__ */ judged(
  'a colour of a screen, written "#rrggbb" or "#rgb"',
  'Write it that way, for example "#a03020".',
  (value) => (typeof value === "string" ? !SCREEN.test(value) && "unreadable" : "wrong-kind"),
  { kind: "colour", example: '"#a03020"' },
);

/**
 * A colour as a screen shows it, as CIE Lab of 1976 in the light of D65: what `colourDifference` takes.
 *
 * @param screen sRGB, `#a03020` or `#a32`
 * @throws StripeError "unreadable" for any other text, a name of a colour among them
 * @example labOf("#ffffff")[0] // 100
 */
export function labOf(screen: string): LabColour {
  const faults = checked(screen, ["screen"], aScreenColour);
  if (faults.length > 0) throw new StripeError("labOf", faults);
  const digits = screen.length === 4 ? screen.replace(/[0-9a-f]/giu, "$&$&") : screen;
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => linear(parseInt(digits.slice(at, at + 2), 16) / 255));
  const [x = 0, y = 0, z = 0] = TO_XYZ.map(([r, g, b], at) =>
    rooted((r * red + g * green + b * blue) / (WHITE[at] ?? 1)),
  );
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
