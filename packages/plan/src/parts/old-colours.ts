import type { Hand } from "../job/runs.js";
import type { Group } from "./groups.js";
import { handOf } from "./laid-stripes.js";
import type { LaidStripe } from "./laid-stripes.js";
import { oldPlaceOfEach } from "./partners.js";
import type { Table } from "./table.js";

/** Old ends of one colour that the new ends of a group meet, one after the other. */
export interface OldColour extends Hand {
  readonly ends: number;
  readonly firstEnd: number;
}

/** The colours of the old warp by group: what the eye sees beside the joining list; old places are those of its stripes. */
export function oldColours(
  groups: readonly Group[],
  table: Table,
  oldStripes: readonly LaidStripe[],
): readonly (readonly OldColour[])[] {
  const places = oldPlaceOfEach(table);
  let at = 0;
  return groups.map(({ firstEnd, lastEnd }) => {
    const seen: OldColour[] = [];
    let last: LaidStripe | undefined;
    for (let end = firstEnd; end <= lastEnd; end += 1) {
      const place = places[end - 1] ?? null;
      if (place === null) continue;
      while ((oldStripes[at]?.lastEnd ?? Infinity) < place) at += 1;
      const stripe = oldStripes[at];
      if (stripe === undefined) continue;
      const before = seen.at(-1);
      if (before !== undefined && last === stripe) seen[seen.length - 1] = { ...before, ends: before.ends + 1 };
      else seen.push({ ...handOf(stripe), ends: 1, firstEnd: end });
      last = stripe;
    }
    return seen;
  });
}
