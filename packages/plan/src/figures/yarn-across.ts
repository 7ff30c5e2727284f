import { diameterByPeirce, knotClearance, millimetres } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { group } from "../core/keys.js";
import { worked } from "../core/worked.js";
import { cottonCountOf, finishedCount } from "../parts/thread-diameter.js";
import { ownYarn } from "./keys.js";
import * as knots from "./knots.js";

const { figure, counted, part } = worked("yarn");

/** Of the finished thread, told in the cotton system whatever it is written in. */
export const cotton: Figure<number, "yarn"> = counted(
  "count as cotton",
  "cotton count",
  { count: group(ownYarn.count) },
  ({ count }) => cottonCountOf(finishedCount(count)),
);
/** In millimetres. */
export const across: Figure<number, "yarn"> = figure("across the thread", diameterByPeirce, { cottonCount: cotton });
/** The same as a length. */
export const diameter: Part<Length, "yarn"> = part({ across }, (given) => millimetres(given.across));
/** Of the thicker of it and the old threads. */
export const inDent: Figure<number, "yarn"> = figure("threads across a dent", knotClearance, {
  space: knots.space,
  oldDiameter: knots.oldDiameter,
  newDiameter: diameter,
});
