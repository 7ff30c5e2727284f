import { isSequence } from "../sequence/brand.js";
import { type Check, checked, type Checks, fault, fieldFaults, PASSED } from "./check.js";
import type { StripeErrorCode } from "./stripe-error.js";

/** A check that asks one question and refuses in one way. */
export function kind(
  code: StripeErrorCode,
  expected: string,
  remedy: string,
  holds: (value: unknown) => boolean,
): Check {
  return (value, where) => (holds(value) ? PASSED : fault(code, where, expected, value, remedy));
}

/** A whole number within bounds. */
export function whole(least: number, most: number = Number.MAX_SAFE_INTEGER): Check {
  return (value, where) => {
    const isWhole = Number.isInteger(value);
    if (isWhole && (value as number) >= least && (value as number) <= most) return PASSED;
    const range = most === Number.MAX_SAFE_INTEGER ? `of ${least} or more` : `from ${least} to ${most}`;
    const code = isWhole ? "out-of-range" : typeof value === "number" ? "not-whole" : "wrong-kind";
    return fault(code, where, `a whole number ${range}`, value, "Give the count itself.");
  };
}

/** One of a few words. */
export function oneOf(...words: readonly string[]): Check {
  return (value, where) => {
    if (words.includes(value as string)) return PASSED;
    const code = typeof value === "string" ? "out-of-range" : "wrong-kind";
    return fault(code, where, words.map((word) => JSON.stringify(word)).join(" or "), value, "Choose one.");
  };
}

/** A list of things of one kind, at least so many; the first fault is enough. */
export function listOf(fewest: 0 | 1, each: Check): Check {
  return (value, where) => {
    if (!Array.isArray(value)) return fault("wrong-kind", where, "a list", value, "Put it in [ ].");
    if (value.length < fewest) return fault("empty", where, "at least one item", value, "Put one in.");
    for (let index = 0; index < value.length; index++) {
      const found = checked(value[index], `${where}[${index}]`, each);
      if (found.length > 0) return found;
    }
    return PASSED;
  };
}

/** An object with exactly these fields. */
export function fields(checks: Checks): Check {
  return (value, where) => fieldFaults(value, where, checks);
}

/** A sequence made by this package; it may hold no ends. */
export const aSequence: Check = /* @__PURE__ */ kind(
  "not-a-sequence",
  "a sequence",
  "Make one with sequence([…]).",
  isSequence,
);

/** A sequence with at least one end. */
export const someEnds: Check = (value, where) =>
  isSequence(value) && value.ends === 0
    ? fault("empty", where, "some ends", "no ends", "Give it a stripe.")
    : aSequence(value, where);

/** Any value; undefined is refused wherever a value is wanted. */
export const anyColour: Check = () => PASSED;

/** A Map whose keys are colours. */
export const aMap: Check = /* @__PURE__ */ kind(
  "wrong-kind",
  "a Map from colours",
  "Write new Map([[colour, …]]).",
  (value) => value instanceof Map,
);
