import { yarnLength, yarnLengthDirect, yarnMass, yarnMassDirect } from "@thrum/maths";
import type { Length, Mass } from "@thrum/maths";
import type { Figure, Source } from "../core/source.js";
import { worked } from "../core/worked.js";
import { counts, direct, indirect } from "./yarn-thread.js";

const { figure, choice } = worked("yarn");

/** The mass of a length of it, and the length of a mass. */
export function massOf(label: string, length: Source<Length, "yarn"> | Source<Length>): Figure<Mass, "yarn"> {
  return choice(label, counts, {
    "length to the mass": figure(label, yarnMass, { length, count: indirect }),
    "mass to the length": figure(label, yarnMassDirect, { length, count: direct }),
  });
}
export function lengthOf(label: string, mass: Source<Mass, "yarn">): Figure<Length, "yarn"> {
  return choice(label, counts, {
    "length to the mass": figure(label, yarnLength, { mass, count: indirect }),
    "mass to the length": figure(label, yarnLengthDirect, { mass, count: direct }),
  });
}
