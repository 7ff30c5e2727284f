import type { Quantity } from "../quantity/index.js";
import { anything } from "./input.js";
import type { Input, Range } from "./input.js";

type Words = Required<Pick<Input<unknown>, "noun" | "example" | "base" | "remedy">>;

function percentage<D extends string>(
  dimension: D,
  meaning: string,
  range: Partial<Range>,
  words: Words,
): Input<Quantity<D>> {
  return { what: "quantity", dimension, meaning, ...words, range: { ...anything, ...range }, member: null };
}

/** A percentage of what was there before, less than all of it. */
export function loss(meaning: string): Input<Quantity<"loss">> {
  return percentage(
    "loss",
    meaning,
    { atLeast: 0, below: 1 },
    {
      noun: "a percentage lost",
      example: "percentLost(10)",
      base: "of what was there before",
      remedy: "Write percentLost(10): a percentage lost, of what was there before.",
    },
  );
}

/** A percentage added to what is there. */
export function added(meaning: string): Input<Quantity<"addition">> {
  return percentage(
    "addition",
    meaning,
    { atLeast: 0 },
    {
      noun: "a percentage added",
      example: "percentAdded(6)",
      base: "of what it is added to",
      remedy: "Write percentAdded(6): a percentage of what it is added to.",
    },
  );
}

/** A percentage of a whole, more than nothing and no more than all of it. */
export function share(meaning: string): Input<Quantity<"share">> {
  const { range, ...proportion } = proportionOf(meaning);
  return { ...proportion, range: { ...range, atMost: 1 } };
}

/** A percentage of something else, which may be more than all of it. */
export function proportionOf(meaning: string): Input<Quantity<"share">> {
  return percentage(
    "share",
    meaning,
    { above: 0 },
    {
      noun: "a share in percent",
      example: "percentOf(80)",
      base: "of the whole",
      remedy: "Write percentOf(80): a percentage of a whole.",
    },
  );
}
