import {
  centimetres,
  feet,
  grams,
  inches,
  kilograms,
  kilometres,
  metres,
  millimetres,
  ounces,
  pounds,
  yards,
} from "@thrum/maths";
import type { Unit } from "@thrum/maths";

/** The units of a length in a job. */
export const LENGTHS: readonly Unit<"length">[] = [yards, feet, inches, metres, centimetres, millimetres, kilometres];
/** The units of a mass in a job. */
export const MASSES: readonly Unit<"mass">[] = [pounds, ounces, grams, kilograms];
