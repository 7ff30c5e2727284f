import {
  countOfLabel,
  convertCount,
  cottonCount,
  diameterByPeirce,
  millimetres,
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

/** A count told in the cotton system. */
export function cottonCountOf(count: DirectCount | IndirectCount): number {
  return convertCount(count, cottonCount).count.in(cottonCount);
}

/** Across a thread taken as round, by its count: the rule of Peirce for cotton, whatever the fibre. */
export function threadDiameter(count: DirectCount | IndirectCount): Length {
  return millimetres(diameterByPeirce({ cottonCount: cottonCountOf(count) }));
}
