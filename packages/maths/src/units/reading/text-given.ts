import { described } from "../../engine/quantity/index.js";
import { missingOr, QuantityError } from "../../engine/refusal.js";
import type { RefusalCode } from "../../engine/refusal.js";

/** Refuses a text; candidates are texts with one reading each. */
export type RefuseText = (code: RefusalCode, remedy: string, candidates?: readonly string[]) => never;

const LONGEST = 200;

/** The refusals of one reader of one text. */
export function refusalsOf(reader: string, expected: string, example: string, given: unknown): RefuseText {
  return (code, remedy, candidates) => {
    const params = { kind: "text", example, ...(candidates === undefined ? {} : { candidates }) };
    const place = { function: reader, path: ["text"] };
    throw new QuantityError({ code, ...place, expected, received: described(given), remedy, params });
  };
}

/** The text with its blanks run together, or the refusal of what is none. */
export function textGiven(given: unknown, refuse: RefuseText): string {
  if (typeof given !== "string") return refuse(missingOr(given, "wrong-kind"), "Give it as text.");
  if (given.length > LONGEST) return refuse("too-long", `Text of more than ${String(LONGEST)} characters is not read.`);
  const text = given.trim().replace(/[ \t]+/gu, " ");
  return text === "" ? refuse("empty", "Write it out.") : text;
}
