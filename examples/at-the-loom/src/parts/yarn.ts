/** A yarn as the sheets show it: `yarnLooks` of the reckoning gives it. */
export interface Yarn {
  readonly name: string;
  /** The letter of the sheets. */
  readonly letter: string;
  /** A colour of CSS; null where only letter and hatch are known. */
  readonly fill: string | null;
  /** Lines of its hatch as an SVG path in 30 × 20; null where it has none. */
  readonly hatch: string | null;
  /** Black or white, whichever is seen on the fill. */
  readonly onFill: string;
}

/** Neighbouring ends alike. */
export interface Band {
  readonly ends: number;
  readonly fill: string | null;
}
