import { isSequence } from "../sequence/brand.js";
import { type Check, checked, type Checks, fault, fieldFaults, judged, PASSED } from "./check.js";
import { described } from "./described.js";

/** A whole number within bounds. */
export function whole(least: number, most: number = Number.MAX_SAFE_INTEGER): Check {
  const range = most < Number.MAX_SAFE_INTEGER ? `from ${least} to ${most}` : `of ${least} or more`;
  return judged(`a whole number ${range}`, "Give the count itself.", (value) => {
    if (typeof value !== "number") return "wrong-kind";
    if (!Number.isInteger(value)) return "not-whole";
    return (value < least || value > most) && "out-of-range";
  });
}

/** One of a few words. */
export function oneOf(...words: readonly unknown[]): Check {
  return judged(words.map(described).join(" or "), "Choose one.", (value) => !words.includes(value) && "out-of-range");
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
export const aSequence: Check = /* @__PURE__ */ sequenceOf(0, "a sequence");

/** A sequence with at least one end. */
export const someEnds: Check = /* @__PURE__ */ sequenceOf(1, "a sequence with ends in it");

function sequenceOf(least: 0 | 1, expected: string): Check {
  return judged(expected, "Make one with sequence([…]).", (value) => {
    if (!isSequence(value)) return "not-a-sequence";
    return value.ends < least && "empty";
  });
}

/** Any value; undefined is refused wherever a value is wanted. */
export const anyColour: Check = () => PASSED;

/** A Map whose keys are colours. */
export const aMap: Check = /* @__PURE__ */ judged(
  "a Map from colours",
  "Write new Map([[colour, …]]).",
  (value) => !(value instanceof Map) && "wrong-kind",
);
