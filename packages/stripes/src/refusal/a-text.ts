import { type Check, judged } from "./check.js";

/** A text that says something in at most so many characters; the length is looked at first, for it may be hostile. */
export function aText(most: number): Check {
  return judged(`a text of 1 to ${most} characters`, "Put it in quotation marks.", (value) => {
    if (typeof value !== "string") return "wrong-kind";
    return value.length > most ? "too-long" : value.trim() === "" && "empty";
  });
}
