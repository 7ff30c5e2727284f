import { join, mirror, pivot, repeat, sequence } from "@thrum/stripes";
import type { Sequence } from "@thrum/stripes";
import type { StripesItem } from "./job.js";
import type { Place } from "./placed-fault.js";

/** The order of the colours as the job writes it. */
export function sequenceOf(items: readonly StripesItem[]): Sequence<string> {
  return join(
    items.map((item) => {
      if ("colour" in item) return sequence([item]);
      if ("repeat" in item) return repeat({ sequence: sequenceOf(item.of), times: item.repeat });
      const half = sequenceOf(item.mirror);
      return item.middleStripe === "once" ? pivot(half) : mirror(half);
    }),
  );
}

/** The fewest ends the stripes can come to, reckoned without laying them out; a middle stripe is left out of account. */
export function leastEnds(items: readonly StripesItem[]): number {
  return items.reduce((sum, item) => {
    if ("colour" in item) return sum + item.ends;
    if ("repeat" in item) return sum + item.repeat * leastEnds(item.of);
    const half = leastEnds(item.mirror);
    return sum + (item.middleStripe === "twice" ? 2 * half : half);
  }, 0);
}

/** Every colour the stripes name, and where. */
export function coloursIn(
  items: readonly StripesItem[],
  path: Place,
): readonly (readonly [colour: string, path: Place])[] {
  return items.flatMap((item, at) => {
    if ("colour" in item) return [[item.colour, [...path, at, "colour"]] as const];
    return "repeat" in item ? coloursIn(item.of, [...path, at, "of"]) : coloursIn(item.mirror, [...path, at, "mirror"]);
  });
}
