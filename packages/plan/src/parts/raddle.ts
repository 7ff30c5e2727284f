import { compare, endsUpTo, widthOfSley } from "@thrum/maths";
import type { DentsPerLength, EndsPerLength, Length } from "@thrum/maths";

/** A mark of the raddle, from end 1's side. */
export interface RaddleRow {
  readonly to: Length;
  /** Ends up to it. */
  readonly ends: number;
}

const MOST_ROWS = 2000;

/** How many ends lie up to every so many teeth of the raddle, the last mark past the warp. */
export function raddleRows(given: {
  readonly teeth: DentsPerLength;
  readonly widthInReed: Length;
  readonly sett: EndsPerLength;
  readonly ends: number;
}): readonly RaddleRow[] {
  const { teeth, widthInReed, sett, ends } = given;
  const rows: RaddleRow[] = [];
  for (let tooth = 1; tooth <= MOST_ROWS; tooth += 1) {
    const to = widthOfSley({ reed: teeth, dents: [tooth] });
    rows.push({ to, ends: Math.min(ends, endsUpTo({ length: to, sett })) });
    if (compare(to, widthInReed) >= 0) break;
  }
  return rows;
}
