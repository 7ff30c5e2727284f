/** A knot that joins an old end to a new one. */
export type Knot = "overhand of both ends" | "overhand of one end" | "square" | "weaver's";

/** How a knot measures, in diameters of its thread. */
export interface KnotSize {
  /** The narrowest gap that a hard one passes. */
  readonly least: number;
  /** Across, the other way. */
  readonly across: number;
}

/**
 * Sizes from a simulation of a round rope that neither gives nor rubs, every end pulled tight; no measured widths of
 * knots in yarn were found. A weaver's knot is taken as large as it can be.
 */
export const KNOTS: Readonly<Record<Knot, KnotSize>> = {
  "overhand of both ends": { least: 3.8, across: 4.85 },
  "overhand of one end": { least: 2.9, across: 3 },
  square: { least: 3, across: 4 },
  "weaver's": { least: 3.4, across: 3.85 },
};
