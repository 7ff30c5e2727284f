import { aText } from "../refusal/a-text.js";
import { type Check, check, type Checks, refuse } from "../refusal/check.js";
import { described } from "../refusal/described.js";
import { kind } from "../refusal/kinds.js";

/** How a colour is shown. */
export interface Paint {
  /** A colour of the web: `#a03020`, `navy`, `rgb(160 48 32)`. Nothing that could fetch or run. */
  readonly fill: string;
  /** For print in black and white. */
  readonly letter: string;
  /** What a screen reader says. */
  readonly name: string;
}

const FILL =
  /^(?:#(?:[0-9a-f]{3,4}|[0-9a-f]{6}|[0-9a-f]{8})|[a-z]{3,30}|(?:rgba?|hsla?|lab|lch|oklab|oklch)\([0-9a-z.,%/ +-]{3,60}\))$/i;
const UNPRINTABLE = /(?![\t\n\r])[\p{Cc}\p{Cs}\uFFFE\uFFFF]/u;

/** Text that may stand in a page once it is escaped. */
export function aLabel(most: number): Check {
  return (value, where) => {
    const found = aText(most)(value, where);
    return found.length > 0 ? found : printable(value, where);
  };
}

const printable: Check = /* @__PURE__ */ kind(
  "unsafe-text",
  "printable characters",
  "Leave control characters out.",
  (value) => !UNPRINTABLE.test(String(value)),
);

export const aFill: Check = /* @__PURE__ */ kind(
  "unsafe-text",
  "a plain colour, such as #a03020",
  "Write its hexadecimal figures.",
  (value) => typeof value === "string" && value.length < 80 && FILL.test(value),
);

/** The paint of a colour, checked. */
export function paintOf<C, P>(refusedBy: string, paints: ReadonlyMap<C, P>, colour: C, checks: Checks): P {
  const paint =
    paints.get(colour) ??
    refuse(refusedBy, "missing", "paints", {
      expected: "a paint for every colour",
      received: described(colour),
      remedy: "Add it.",
    });
  check(refusedBy, paint, checks);
  return paint;
}

export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
}
