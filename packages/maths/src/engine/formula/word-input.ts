import { anything } from "./input.js";
import type { Input } from "./input.js";

/** One of a few words. */
export function oneOf<W extends string>(words: readonly W[], meaning: string): Input<W> {
  const noun = words.map((word) => `"${word}"`).join(" or ");
  const example = `"${words[0] ?? ""}"`;
  return { dimension: "number", member: null, what: "word", noun, meaning, example, range: anything, words };
}
