import { costOfPackages, yarnSpareOfSizes } from "@thrum/maths";
import type { Mass, Money } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { all, field, these } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import * as size from "./size.js";
import { sizesSold } from "./yarn-mixture.js";
import { mass } from "./yarn-needed.js";
import { largest, packages, spare, there } from "./yarn-there.js";

const { figure, choice } = worked("yarn");

/** Of packages of the largest size alone. */
export const costOfLargest: Figure<Money, "yarn"> = figure("cost of the largest size alone", costOfPackages, {
  number: these(packages),
  price: these(field(largest, "price")),
});
/** Of the cheapest mixture of sizes. */
export const costOfMixture: Figure<Money, "yarn"> = choice("cost of the cheapest mixture", sizesSold, {
  one: costOfLargest,
  several: figure("cost of the cheapest mixture", costOfPackages, {
    number: all(size.inMixture),
    price: all(size.price),
  }),
});
/** Over, once the cheapest mixture is bought. */
export const spareOfMixture: Figure<Mass, "yarn"> = choice("left over of the mixture", sizesSold, {
  one: spare,
  several: figure("left over of the mixture", yarnSpareOfSizes, {
    onHand: there,
    packages: all(size.inMixture),
    packageMass: all(size.mass),
    needed: mass,
  }),
});
