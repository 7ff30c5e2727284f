import { diameterByPeirce, knotClearance } from "@thrum/maths";
import type { IndirectCount, Length } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { group } from "../core/keys.js";
import { worked } from "../core/worked.js";
import { finishedCount, indirectCount } from "../parts/thread-diameter.js";
import { ownYarn } from "./keys.js";
import * as knots from "./knots.js";

const { figure, part } = worked("yarn");

/** Of the finished thread, length to the mass whatever it is written in. */
export const lengthToMass: Part<IndirectCount, "yarn"> = part({ count: group(ownYarn.count) }, ({ count }) =>
  indirectCount(finishedCount(count)),
);
export const diameter: Figure<Length, "yarn"> = figure("across the thread", diameterByPeirce, { count: lengthToMass });
/** Of the thicker of it and the old threads. */
export const inDent: Figure<number, "yarn"> = figure("threads across a dent", knotClearance, {
  space: knots.space,
  oldDiameter: knots.oldDiameter,
  newDiameter: diameter,
});
