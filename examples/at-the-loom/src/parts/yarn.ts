/** A yarn as the sheets show it: `yarnsOf` of the reckoning gives it. */
export interface Yarn {
  readonly name: string;
  /** The letter of the sheets. */
  readonly letter: string;
  /** A colour of CSS; null where only letter and hatch are known. */
  readonly fill: string | null;
  /** Lines of its hatch as an SVG path in a tile of 8 by 8. */
  readonly hatch: string;
}

/** Neighbouring ends alike. */
export interface Band {
  readonly ends: number;
  readonly fill: string | null;
  readonly hatch?: string;
  /** Of the stripe that begins here, with its ends; none in the middle of a blend. */
  readonly letter?: string;
  readonly under?: number;
}

/** A hatch as a picture of CSS, for what has no colour of its own on a screen. */
function hatchPicture(path: string): string {
  const lines = `<path d='${path}' fill='none' stroke='%23555' stroke-width='1.2'/>`;
  const tile = `<svg xmlns='http://www.w3.org/2000/svg' width='8' height='8'><rect width='8' height='8' fill='%23eee8da'/>${lines}</svg>`;
  return `url("data:image/svg+xml,${tile.replaceAll("<", "%3C").replaceAll(">", "%3E")}")`;
}

/** What is painted there: its colour, its hatch, or the grey of the old warp. */
export function paint({ fill, hatch }: { readonly fill: string | null; readonly hatch?: string }): string {
  if (fill !== null) return fill;
  return hatch === undefined ? "var(--old)" : hatchPicture(hatch);
}
