import type { FaultParams } from "../refusal.js";
import type { Input } from "./input.js";

/** What an input wants, in words; a range stands before the meaning. */
export function wanted({ what, noun, meaning, member, mayBeEmpty }: Input<unknown>, range = ""): string {
  if (member !== null) return `a list${mayBeEmpty === true ? "" : " of at least one"}, each ${wanted(member)}`;
  if (what === "number") return `a number (${noun}, ${meaning})${range}`;
  return `${what === "whole" ? "a whole number of " : ""}${noun}${range} (${meaning})`;
}

/** What to write instead, with an example of the kind. */
export function remedyFor({ what, example, remedy, member }: Input<unknown>): string {
  if (member !== null) return `Write a list, for example ${example}.`;
  if (what === "quantity") return remedy ?? `Make it with a unit you import, for example ${example}.`;
  if (what === "unit") return `Units are values you import, not text: for example ${example}.`;
  return what === "word"
    ? `Choose one of them, for example ${example}.`
    : `Write a plain number, for example ${example}.`;
}

/** What a sentence about an input is made of. */
export function limitsOf(input: Input<unknown>): FaultParams {
  const { what, dimension, words, range } = input.member ?? input;
  const { atLeast, above, below, atMost } = range;
  return {
    kind: what === "quantity" || what === "unit" ? dimension : what,
    example: input.example,
    ...(atLeast === null ? {} : { atLeast }),
    ...(above === null ? {} : { above }),
    ...(below === null ? {} : { below }),
    ...(atMost === undefined ? {} : { atMost }),
    ...(words === undefined ? {} : { candidates: words }),
  };
}
