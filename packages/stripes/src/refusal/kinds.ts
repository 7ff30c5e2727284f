import { isSequence } from "./is-sequence.js";
import { type Check, checked, type Checks, fault, fieldFaults, judged, PASSED } from "./check.js";
import { described } from "./described.js";
import type { Found, StripeErrorCode } from "./stripe-error.js";

/** A whole number within bounds. */
export function whole(least: number, most: number = Number.MAX_SAFE_INTEGER): Check {
  const range = most < Number.MAX_SAFE_INTEGER ? `from ${least} to ${most}` : `of ${least} or more`;
  const params = { kind: "whole", atLeast: least, atMost: most, example: String(Math.min(most, Math.max(least, 8))) };
  const wrong = (value: unknown): StripeErrorCode | false => {
    if (typeof value !== "number") return "wrong-kind";
    if (!Number.isFinite(value)) return "not-a-number";
    if (!Number.isInteger(value)) return "not-whole";
    return (value < least || value > most) && "out-of-range";
  };
  return judged(`a whole number ${range}`, "Give the count itself.", wrong, params);
}

/** One of a few words. */
export function oneOf(...words: readonly unknown[]): Check {
  const candidates = words.filter((word) => typeof word === "string" || typeof word === "number");
  const wrong = (value: unknown): StripeErrorCode | false => {
    if (words.includes(value)) return false;
    return typeof value === "string" ? "unknown-word" : "wrong-kind";
  };
  return judged(words.map(described).join(" or "), "Choose one.", wrong, { kind: "word", candidates });
}

/** A list of things of one kind, at least so many. */
export function listOf(fewest: 0 | 1, each: Check): Check {
  const params = { kind: "list", atLeast: fewest };
  return (value, path) => {
    if (!Array.isArray(value)) return fault("wrong-kind", path, "a list", value, "Put it in [ ].", params);
    if (value.length < fewest) return fault("empty", path, "at least one item", value, "Put one in.", params);
    const faults: Found[] = [];
    for (let index = 0; index < value.length; index++) {
      const found = checked(value[index], [...path, index], each);
      if (found.length > 0) faults.push(...found);
    }
    return faults;
  };
}

/** An object with exactly these fields. */
export function fields(checks: Checks): Check {
  return (value, path) => fieldFaults(value, path, checks);
}

/** A sequence made by this package; it may hold no ends. */
export const aSequence: Check = /* @__PURE__ */ sequenceOf(0, "a sequence");

/** A sequence with at least one end. */
export const someEnds: Check = /* @__PURE__ */ sequenceOf(1, "a sequence with ends in it");

function sequenceOf(least: 0 | 1, expected: string): Check {
  const wrong = (value: unknown): StripeErrorCode | false => {
    if (!isSequence(value)) return "wrong-kind";
    return value.ends < least && "empty";
  };
  return judged(expected, "Make one with sequence([…]).", wrong, { kind: "sequence" });
}

/** Any value; undefined is refused wherever a value is wanted. */
export const anyColour: Check = () => PASSED;

/** A Map whose keys are colours. */
export const aMap: Check = /* @__PURE__ */ judged(
  "a Map from colours",
  "Write new Map([[colour, …]]).",
  (value) => !(value instanceof Map) && "wrong-kind",
);
