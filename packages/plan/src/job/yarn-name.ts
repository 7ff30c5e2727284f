import { unitCalled } from "@thrum/maths";
import { LENGTHS, MASSES } from "./units.js";

const LONGEST = 24;

/** Why this cannot be the name of a yarn; undefined where it can. */
export function yarnNameFault(name: string): string | undefined {
  const [first = ""] = name.split(" ");
  const size = Array.from(name).length;
  if (size < 1 || size > LONGEST) return `A name has 1 to ${String(LONGEST)} characters.`;
  if (name !== name.normalize("NFC") || name !== name.trim().replace(/\s+/gu, " "))
    return "Write it composed (NFC), with single spaces.";
  if (/^[\p{N}.,/⁄%-]+$/u.test(first)) return `A number stands before the name of a yarn: begin the name with a word.`;
  if (isUnitWord(first)) return `${first} is a unit: begin the name with another word.`;
  if (/^the rest( |$)/u.test(name) || name === "others")
    return "These words say something else in a job: choose another name.";
  if (/ [+/] | at | #|: |:$|[,[\]{}\p{Cc}\p{Cs}\p{Zl}\p{Zp}]|^[+/#]/u.test(name)) {
    return "A name is written without plus, stroke, comma, colon, brackets, # and the word at.";
  }
  return undefined;
}

function isUnitWord(word: string): boolean {
  return unitCalled(word, LENGTHS) !== undefined || unitCalled(word, MASSES) !== undefined;
}
