import {
  compare,
  countOfLabel,
  convertCount,
  cottonCount,
  diameterByPeirce,
  resultantCount,
  resultantCountDirect,
} from "@thrum/maths";
import type { DirectCount, IndirectCount, Length } from "@thrum/maths";
import { waits } from "../core/waits.js";
import type { YarnCount } from "../job/yarns.js";

/** The count of the finished thread, however it is written. */
export function finishedCount({ label, number }: YarnCount): DirectCount | IndirectCount {
  if (label !== undefined) return countOfLabel(label);
  if (number === undefined) return waits("yarns");
  const { count, plies: times } = number;
  if (times.length === 0) return count;
  const plies = times.reduce((so, one) => so * one, 1);
  return count.dimension === "mass per length"
    ? resultantCountDirect({ count, plies })
    : resultantCount({ count, plies });
}

/** A count as length to the mass: as it is where it is one already, else told in the cotton system. */
export function indirectCount(count: DirectCount | IndirectCount): IndirectCount {
  return count.dimension === "length per mass" ? count : convertCount(count, cottonCount).count;
}

/** The count of the thickest of several threads, as length to the mass. */
export function thickest(counts: readonly (DirectCount | IndirectCount)[]): IndirectCount {
  const [first, ...others] = counts.map(indirectCount);
  if (first === undefined) return waits("oldWarp", "yarn");
  return others.reduce((thick, one) => (compare(one, thick) < 0 ? one : thick), first);
}

/** Across a thread taken as round, by its count: the rule of Peirce for cotton, whatever the fibre. */
export function threadDiameter(count: DirectCount | IndirectCount): Length {
  return diameterByPeirce({ count: indirectCount(count) });
}
