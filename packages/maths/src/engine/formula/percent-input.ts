import type { Quantity } from "../quantity/index.js";
import { anything } from "./input.js";
import type { Input } from "./input.js";

/** A percentage of what was there before, less than all of it. */
export function loss(meaning: string): Input<Quantity<"loss">> {
  const [noun, example] = ["a percentage lost", "percentLost(10)"];
  return {
    what: "quantity",
    dimension: "loss",
    noun,
    meaning,
    example,
    range: { ...anything, atLeast: 0, below: 1 },
    member: null,
  };
}

/** A percentage added to what is there. */
export function added(meaning: string): Input<Quantity<"addition">> {
  const [noun, example] = ["a percentage added", "percentAdded(6)"];
  return {
    what: "quantity",
    dimension: "addition",
    noun,
    meaning,
    example,
    range: { ...anything, atLeast: 0 },
    member: null,
  };
}

/** A percentage of a whole, more than nothing and no more than all of it. */
export function share(meaning: string): Input<Quantity<"share">> {
  const { range, ...proportion } = proportionOf(meaning);
  return { ...proportion, range: { ...range, atMost: 1 } };
}

/** A percentage of something else, which may be more than all of it. */
export function proportionOf(meaning: string): Input<Quantity<"share">> {
  const [noun, example] = ["a share in percent", "percentOf(80)"];
  return {
    what: "quantity",
    dimension: "share",
    noun,
    meaning,
    example,
    range: { ...anything, above: 0 },
    member: null,
  };
}
