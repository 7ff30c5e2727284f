import type { DirectCount, IndirectCount } from "@thrum/maths";
import { waits } from "../core/waits.js";
import type { NumberedCount, YarnCount } from "../job/yarns.js";

/** The thread that a number counts, by its kind of count. */
export interface SingleThread {
  readonly indirect?: IndirectCount;
  readonly direct?: DirectCount;
}

export function singleThread({ number: { count } }: { readonly number: NumberedCount }): SingleThread {
  return count.dimension === "mass per length" ? { direct: count } : { indirect: count };
}

/** How many singles lie in the finished thread. */
export function foldedTimes({ number }: { readonly number: NumberedCount }): number {
  return number.plies.reduce((so, plies) => so * plies, 1);
}

/** How the count of a yarn is written. */
export function writtenAs(given: {
  readonly name: string;
  readonly label: YarnCount["label"] | null;
  readonly number: NumberedCount | null;
}): "label" | "folded" | "thread" {
  if (given.label != null) return "label";
  if (given.number === null) return waits("yarns", given.name, "count");
  return given.number.plies.length > 0 ? "folded" : "thread";
}
