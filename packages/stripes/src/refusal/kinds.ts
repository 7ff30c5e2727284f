import { type Check, fault, fieldFaults, PASSED } from "./check.js";
import { isSequence } from "../sequence/brand.js";

/** A whole number within bounds. */
export function whole(least: number, most: number = Number.MAX_SAFE_INTEGER): Check {
  return (value, where) => {
    if (Number.isInteger(value) && (value as number) >= least && (value as number) <= most) return PASSED;
    const range = most === Number.MAX_SAFE_INTEGER ? `of ${least} or more` : `from ${least} to ${most}`;
    const code = typeof value !== "number" ? "wrong-kind" : Number.isInteger(value) ? "out-of-range" : "not-whole";
    return fault(
      code,
      where,
      `a whole number ${range}`,
      value,
      "Nothing is rounded or cut to fit: give the count itself.",
    );
  };
}

/** One of a few words. */
export function oneOf(...words: readonly string[]): Check {
  return (value, where) =>
    words.includes(value as string)
      ? PASSED
      : fault(
          typeof value === "string" ? "out-of-range" : "wrong-kind",
          where,
          words.map((word) => JSON.stringify(word)).join(" or "),
          value,
          "Choose one of these.",
        );
}

/** A list, not empty, of things of one kind. */
export function listOf(each: Check): Check {
  return (value, where) => {
    if (!Array.isArray(value)) return fault("wrong-kind", where, "a list", value, "Put it in square brackets.");
    if (value.length === 0) return fault("empty", where, "at least one item", value, "An empty list has no ends.");
    for (let index = 0; index < value.length; index++) {
      const found = each(value[index], `${where}[${index}]`);
      if (found.length > 0) return found;
    }
    return PASSED;
  };
}

/** An object with exactly these fields. */
export function fields(checks: Readonly<Record<string, Check>>): Check {
  return (value, where) => fieldFaults(value, where, checks);
}

/** A sequence made by this package; it may hold no ends. */
export const aSequence: Check = (value, where) =>
  isSequence(value)
    ? PASSED
    : fault(
        "not-a-sequence",
        where,
        "a sequence",
        value,
        "Make one with sequence([{ colour, ends }]); a copy is only data.",
      );

/** A sequence with at least one end. */
export const someEnds: Check = (value, where) =>
  isSequence(value) && value.ends === 0
    ? fault("empty", where, "a sequence with ends", "no ends", "There is nothing to work on.")
    : aSequence(value, where);

/** Any value but undefined. */
export const anyColour: Check = (value, where) =>
  value === undefined ? fault("missing", where, "a colour", value, "Give every end a colour.") : PASSED;
