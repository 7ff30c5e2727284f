// Written by .ci/build/catalogue.mjs, from units/mixed-up.ts.
/** A unit by its names and its exact size. */
export type Sized = readonly [name: string, symbol: string, numerator: number, denominator: number];

/** The units that a reader takes for one another, by their kind. */
export const TAKEN_FOR: Readonly<Record<string, readonly Sized[]>> = {
  length: [
    ["inches", "in", 127, 5000],
    ["feet", "ft", 381, 1250],
    ["yards", "yd", 1143, 1250],
    ["centimetres", "cm", 1, 100],
    ["metres", "m", 1, 1],
  ],
  mass: [
    ["ounces", "oz", 45359237, 1600000],
    ["pounds", "lb", 45359237, 100000],
    ["grams", "g", 1, 1],
    ["kilograms", "kg", 1000, 1],
  ],
  "length per mass": [
    ["cottonCount", "Ne", 10972800, 6479891],
    ["worstedCount", "worsted count", 7315200, 6479891],
    ["linenCount", "lea", 27432000, 45359237],
    ["woollenRun", "run", 146304000, 45359237],
    ["metricCount", "Nm", 1, 1],
  ],
  "mass per length": [
    ["tex", "tex", 1, 1000],
    ["decitex", "dtex", 1, 10000],
    ["denier", "den", 1, 9000],
    ["kilotex", "ktex", 1, 1],
  ],
  "mass per area": [
    ["gramsPerSquareMetre", "g/m²", 1, 1],
    ["ouncesPerSquareYard", "oz/sq yd", 5669904625, 167225472],
  ],
};

/** The lengths that a number of things is told to, with the one each is taken for. */
export const TOLD_TO: readonly (readonly [of: Sized, by: Sized])[] = [
  [
    ["inches", "in", 127, 5000],
    ["centimetres", "cm", 1, 100],
  ],
  [
    ["centimetres", "cm", 1, 100],
    ["inches", "in", 127, 5000],
  ],
];

/** The symbols of the lengths of which a hand reads no finer part than an eighth. */
export const IN_EIGHTHS: readonly string[] = ["in"];
