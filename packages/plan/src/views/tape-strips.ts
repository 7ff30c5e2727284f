/** A mark across the tape, in millimetres from the beginning of the piece. */
export interface Tick {
  readonly at: number;
  readonly reach: "short" | "half" | "long";
  /** The figure beside a long one. */
  readonly figure: string;
}

/** A piece of paper tape no longer than a page: from where to where, and its ticks. */
export interface Strip {
  readonly number: number;
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly Tick[];
}

/** How a tape is divided. */
export interface Division {
  readonly millimetres: number;
  readonly ofLong: number;
  readonly ofHalf: number;
}

export const EIGHTHS_OF_AN_INCH: Division = { millimetres: 25.4 / 8, ofLong: 8, ofHalf: 4 };
export const MILLIMETRES: Division = { millimetres: 1, ofLong: 10, ofHalf: 5 };

const STRIP = 190;

function tick(number: number, { millimetres, ofLong, ofHalf }: Division): Tick {
  const isLong = number % ofLong === 0;
  const reach = isLong ? "long" : number % ofHalf === 0 ? "half" : "short";
  return { at: number * millimetres, reach, figure: isLong ? String(number / ofLong) : "" };
}

/** How many strips a tape takes, before any is made. */
export function stripsFor(length: number): number {
  return Math.ceil(length / STRIP);
}

/** A tape of a length in millimetres, cut into strips that a page can hold. */
export function tapeStrips(length: number, division: Division): readonly Strip[] {
  return Array.from({ length: stripsFor(length) }, (_, index) => {
    const [from, to] = [index * STRIP, Math.min(length, (index + 1) * STRIP)];
    const first = Math.ceil(from / division.millimetres);
    const last = Math.floor(to / division.millimetres);
    const ticks = Array.from({ length: last - first + 1 }, (__, at) => tick(first + at, division));
    return { number: index + 1, from, to, ticks };
  });
}
