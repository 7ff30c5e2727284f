import { type Check, check, fault, PASSED, refuse } from "../refusal/check.js";
import { described } from "../refusal/described.js";

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
const NOT_XML = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/u;

/** Text that may stand in a page once it is escaped. */
export function aLabel(most: number): Check {
  return (value, where) => {
    if (typeof value !== "string") return fault("wrong-kind", where, "a text", value, "Put it in quotation marks.");
    if (value.trim() === "") return fault("empty", where, "a text", value, "A screen reader has nothing else to say.");
    if (value.length > most) return fault("too-long", where, `at most ${most} characters`, value.length, "Shorten it.");
    return NOT_XML.test(value)
      ? fault("unsafe-text", where, "printable characters", value, "Leave control characters out.")
      : PASSED;
  };
}

export const aFill: Check = (value, where) =>
  typeof value === "string" && value.length < 80 && FILL.test(value)
    ? PASSED
    : fault("unsafe-text", where, "a plain colour, such as #a03020", value, "Write its hexadecimal figures.");

/** The paint of a colour, checked. */
export function paintOf<C, P>(
  refusedBy: string,
  paints: ReadonlyMap<C, P>,
  colour: C,
  checks: Readonly<Record<string, Check>>,
): P {
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

export const aMapOfPaints: Check = (value, where) =>
  value instanceof Map
    ? PASSED
    : fault("wrong-kind", where, "a Map from colours", value, "Write new Map([[colour, paint]]).");

export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
}
