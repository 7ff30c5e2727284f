import type { Unit } from "../engine/quantity/index.js";
import { decitex, denier, kilotex, tex } from "./direct-counts.js";
import { cottonCount, linenCount, metricCount, woollenRun, worstedCount } from "./indirect-counts.js";
import { centimetres, feet, inches, metres, yards } from "./length.js";
import { gramsPerSquareMetre, ouncesPerSquareYard } from "./mass-per-area.js";
import { grams, kilograms, ounces, pounds } from "./mass.js";

// No program imports this: `pnpm generate` writes from it what the check knows of these units, their sizes as they are here,
// so that a bundle that checks pays for a few numbers and one that does not for nothing.

interface MixedUp {
  /** The units of each kind that a reader takes for one another. */
  readonly kinds: readonly (readonly Unit<string>[])[];
  /** The two lengths that a number of things is told to, each taken for the other. */
  readonly toldTo: readonly [Unit<"length">, Unit<"length">];
  /** The lengths of which a hand reads no finer part than an eighth. */
  readonly inEighths: readonly Unit<"length">[];
}

/** The units a reader mixes up. */
export const mixedUp: MixedUp = {
  kinds: [
    [inches, feet, yards, centimetres, metres],
    [ounces, pounds, grams, kilograms],
    [cottonCount, worstedCount, linenCount, woollenRun, metricCount],
    [tex, decitex, denier, kilotex],
    [gramsPerSquareMetre, ouncesPerSquareYard],
  ],
  toldTo: [inches, centimetres],
  inEighths: [inches],
};
