import { type Check, checked, judged } from "../refusal/check.js";
import { described } from "../refusal/described.js";
import { StripeError } from "../refusal/stripe-error.js";

/** How a colour is shown. */
export interface Paint {
  /** A colour of the web: `#a03020`, `navy`, `rgb(160 48 32)`. Nothing that could fetch or run. */
  readonly fill: string;
  /** For print in black and white. */
  readonly letter: string;
  /** What a screen reader says. */
  readonly name: string;
}

/** A text that is spelt in one way; the forms end early on a text too long for them. */
export function spelt(form: RegExp, expected: string): Check {
  return judged(
    expected,
    "Write it that way.",
    (value) => !(typeof value === "string" && form.test(value)) && "unsafe-text",
  );
}

/** Text that may stand in a page once it is escaped. */
export function aLabel(most: number): Check {
  const form = `^(?!\\s*$)([\t\n\r]|[^\\p{Cc}\\p{Cs}\\uFFFE\\uFFFF]){1,${most}}$`;
  return spelt(new RegExp(form, "u"), `1 to ${most} printable characters`);
}

export const aFill: Check = /* @__PURE__ */ spelt(
  /^(?:#(?:[0-9a-f]{3,4}|(?:[0-9a-f]{2}){3,4})|[a-z]{3,30}|(?:(?:rgb|hsl)a?|(?:ok)?l(?:ab|ch))\([0-9a-z.,%/ +-]{3,60}\))$/i,
  "a plain colour, such as #a03020",
);

/** What a map gives for a colour, checked. */
export function shownFor<C, P>(refusedBy: string, field: string, map: ReadonlyMap<C, P>, colour: C, passes: Check): P {
  const shown = map.get(colour);
  const name = typeof colour === "string" ? colour.slice(0, 40) : described(colour);
  const faults = checked(shown, [field, name], passes);
  if (faults.length > 0) throw new StripeError(refusedBy, faults);
  return shown as P;
}

/** Text between the marks of an SVG, or within those of one of its attributes. */
export function escapedForSvg(text: string): string {
  return text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
}
