/** A unit that is taken for another of its kind: its symbol and its size as the units have it, an exact fraction. */
export type Sibling = readonly [symbol: string, over: number, under: number];

/** The units a reader mixes up. The engine knows no units; a test holds these against the library's own. */
export const SIBLINGS: Readonly<Record<string, readonly Sibling[]>> = {
  length: [
    ["in", 127, 5000],
    ["ft", 381, 1250],
    ["yd", 1143, 1250],
    ["cm", 1, 100],
    ["m", 1, 1],
  ],
  mass: [
    ["oz", 45359237, 1600000],
    ["lb", 45359237, 100000],
    ["g", 1, 1],
    ["kg", 1000, 1],
  ],
  "length per mass": [
    ["Ne", 10972800, 6479891],
    ["worsted count", 7315200, 6479891],
    ["lea", 27432000, 45359237],
    ["run", 146304000, 45359237],
    ["Nm", 1, 1],
  ],
  "mass per length": [
    ["tex", 1, 1000],
    ["dtex", 1, 10000],
    ["den", 1, 9000],
    ["ktex", 1, 1],
  ],
  "mass per area": [
    ["g/m²", 1, 1],
    ["oz/sq yd", 5669904625, 167225472],
  ],
};
