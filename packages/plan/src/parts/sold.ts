import { compare, grams, inUnit, unitOf } from "@thrum/maths";
import type { Mass } from "@thrum/maths";
import type { Sold } from "../job/yarns.js";

/** The largest of the sizes a yarn is sold in: by mass, or by length where it is sold so. */
export function largestSold({ sold }: { readonly sold: readonly Sold[] }): Sold {
  const isLarger = (one: Sold, than: Sold): boolean => {
    if (one.mass !== undefined && than.mass !== undefined) return compare(one.mass, than.mass) > 0;
    return one.length !== undefined && than.length !== undefined && compare(one.length, than.length) > 0;
  };
  return sold.reduce((largest, one) => (isLarger(one, largest) ? one : largest));
}

/** Nothing, in the unit of another mass. */
export function nothingLike({ mass }: { readonly mass: Mass }): Mass {
  return inUnit(grams(0), unitOf(mass));
}
