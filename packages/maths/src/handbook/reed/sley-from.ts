import { frozen } from "../../engine/frozen.js";
import { described } from "../../engine/quantity/index.js";
import { missingOr, reading, refuse } from "../../engine/refusal.js";
import type { Reading } from "../../engine/refusal.js";

/** A sleying order as the calculations take it: so many dents, of so many ends each, and so on. */
export interface Sley {
  readonly dents: readonly number[];
  readonly endsPerDent: readonly number[];
}

const DENT = /^\d{1,2}$/u;

/** Neighbouring dents of the same number counted together. */
function runsOf(order: readonly number[]): Sley {
  const dents: number[] = [];
  const endsPerDent: number[] = [];
  for (const ends of order) {
    const last = dents.length - 1;
    if (endsPerDent[last] === ends) dents[last] = (dents[last] ?? 0) + 1;
    else {
      dents.push(1);
      endsPerDent.push(ends);
    }
  }
  return frozen({ dents, endsPerDent });
}

/**
 * A sleying order as charts write it, the ends of each dent with hyphens between: `2-1-1`, `0-1-1`.
 *
 * @param order up to a hundred dents; 0 is an empty dent
 * @throws QuantityError "unreadable" for anything else
 * @example sleyFrom("1-2-2").endsPerDent // [1, 2]
 */
export function sleyFrom(order: string): Sley {
  const unread = (remedy: string): never => {
    const expected = "the ends of each dent with hyphens between, such as 2-1-1";
    refuse(missingOr(order, "unreadable"), ["sleyFrom", "order"], expected, described(order), remedy);
  };
  const text: unknown = order;
  if (typeof text !== "string" || text.length > 400) return unread("Give the order as text.");
  const parts = text.split("-").map((part) => part.trim());
  if (parts.length > 100 || !parts.every((part) => DENT.test(part)))
    return unread("Write whole numbers with hyphens between.");
  const ends = parts.map(Number);
  return ends.some((one) => one > 0) ? runsOf(ends) : unread("An order of empty dents holds no warp.");
}

/**
 * As `sleyFrom`, but what cannot be read comes back as data instead of an error.
 *
 * @example sleyReading("2,1,1").ok // false
 */
export function sleyReading(order: string): Reading<Sley> {
  return reading(() => sleyFrom(order));
}
