import { type Check, fault, PASSED } from "./check.js";

/** A text that says something in at most so many characters; the length is looked at first, for it may be hostile. */
export function aText(most: number): Check {
  return (value, where) => {
    if (typeof value !== "string") return fault("wrong-kind", where, "a text", value, "Put it in quotation marks.");
    if (value.length > most) return fault("too-long", where, `at most ${most} characters`, value.length, "Shorten it.");
    return value.trim() === "" ? fault("empty", where, "a text", value, "Write something.") : PASSED;
  };
}
