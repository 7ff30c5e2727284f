import type { Length, Mass, Money } from "@thrum/maths";
import type { JobYarn } from "../job/yarns.js";

/** One of several sizes that a yarn is sold in. */
export interface SizeRow {
  readonly name: string;
  readonly of: { readonly yarn: string };
  /** Its place among them, counted from 0. */
  readonly place: number;
  readonly soldBy: "mass" | "length";
  readonly mass?: Mass;
  readonly length?: Length;
  readonly price?: Money;
}

/** The sizes of the yarns that are sold in more than one, in the order written. */
export function sizeRows(given: {
  readonly yarns: Readonly<Record<string, JobYarn>>;
  readonly names: readonly string[];
}): readonly SizeRow[] {
  return given.names.flatMap((yarn) => {
    const { sold = [] } = Object.hasOwn(given.yarns, yarn) ? (given.yarns[yarn] ?? {}) : {};
    if (sold.length < 2) return [];
    return sold.map((size, place): SizeRow => {
      const soldBy = size.mass === undefined ? "length" : "mass";
      return { name: `${String(place + 1)} ${yarn}`, of: { yarn }, place, soldBy, ...size };
    });
  });
}

/** How many of this size are in the mixture. */
export function ofThisSize(given: { readonly mixture: readonly number[]; readonly place: number }): number {
  return given.mixture[given.place] ?? 0;
}
