import { cheapestPackages } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { all, these } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { ownYarn } from "./keys.js";
import * as size from "./size-alone.js";
import { missing, packages } from "./yarn-there.js";

const { word, part, partBy } = worked("yarn");

/** Whether it is sold in one size or in several. */
export const sizesSold: Figure<"one" | "several", "yarn"> = word("sizes sold", { sold: ownYarn.sold }, (given) =>
  given.sold.length > 1 ? "several" : "one",
);
/** Of each size how many are cheapest, where every size has its price. */
export const mixture: Part<readonly number[], "yarn"> = partBy(sizesSold, {
  one: these(packages),
  several: part({ needed: missing, packageMass: all(size.mass), price: all(size.price) }, cheapestPackages),
});
