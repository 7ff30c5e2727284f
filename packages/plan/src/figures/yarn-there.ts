import {
  lengthsTogether,
  massOfPackages,
  packagesToBuy,
  yarnMissing,
  yarnSpare,
  yarnThere,
  ounces,
} from "@thrum/maths";
import type { Length, Mass } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { always, field, joined, these } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import type { Sold } from "../job/yarns.js";
import { heldInParts } from "../parts/held.js";
import type { Held } from "../parts/held.js";
import { largestSold, nothingLike } from "../parts/sold.js";
import { ownYarn } from "./keys.js";
import { mass } from "./yarn-needed.js";
import { massOf } from "./yarn-by-count.js";
const { figure, choice, firstOf, part, partBy, word } = worked("yarn");
const none = always(null);

/** The largest size it is sold in. */
export const largest: Part<Sold, "yarn"> = part({ sold: ownYarn.sold }, largestSold);
/** Whether that is told by its mass or by its length. */
export const soldBy: Figure<"mass" | "length", "yarn"> = word("sold by", { largest }, (given) =>
  given.largest.mass === undefined ? "length" : "mass",
);
export const packageMass: Figure<Mass, "yarn"> = choice("one package", soldBy, {
  mass: field(largest, "mass"),
  length: massOf("one package", field(largest, "length")),
});
/** What is there, by how it was told. */
export const held: Part<Held, "yarn"> = part({ onHand: ownYarn.onHand }, heldInParts);
/** What of it was told as a length, together. */
export const heldLength: Figure<Length, "yarn"> = figure("told as a length", lengthsTogether, {
  lengths: field(held, "lengths"),
});
export const massOfHeldLength: Figure<Mass, "yarn"> = massOf("told as a length", heldLength);
/** One package for each number of packages that was told. */
export const packagesHeld: Part<readonly Mass[], "yarn"> = part({ held, packageMass }, (given) =>
  given.held.packages.map(() => given.packageMass),
);
export const massOfHeldPackages: Figure<Mass, "yarn"> = figure("told in packages", massOfPackages, {
  number: field(held, "packages"),
  packageMass: packagesHeld,
});
const hasLength = word("some told as a length", { held }, (given) => (given.held.lengths.length > 0 ? "some" : "none"));
const hasPackages = word("some told in packages", { held }, (given) =>
  given.held.packages.length > 0 ? "some" : "none",
);
/** The mass of what was told as a length, and below of what was told in packages: a list of one or of none, to be added up. */
export const lengthsThere: Part<readonly Mass[], "yarn"> = partBy(hasLength, {
  some: these(massOfHeldLength),
  none: always([]),
});
export const packagesThere: Part<readonly Mass[], "yarn"> = partBy(hasPackages, {
  some: these(massOfHeldPackages),
  none: always([]),
});
/** Whether there is any. */
export const isThere: Figure<"some" | "none", "yarn"> = word("on hand", { held }, (given) =>
  given.held.masses.length + given.held.lengths.length + given.held.packages.length > 0 ? "some" : "none",
);
const noneOfPackage = part({ mass: packageMass }, nothingLike);
export const there: Figure<Mass, "yarn"> = choice("on hand", isThere, {
  some: figure("on hand", yarnThere, { onHand: joined(field(held, "masses"), lengthsThere, packagesThere) }),
  none: firstOf(noneOfPackage, always(ounces(0))),
});
/** More than is there. */
export const missing: Figure<Mass, "yarn"> = figure("missing", yarnMissing, { onHand: there, needed: mass });
export const packages: Figure<number, "yarn"> = figure("packages to buy", packagesToBuy, {
  needed: missing,
  packageMass,
});
/** The packages to buy; null where it is not known how large a package is. */
export const toBuy: Part<number | null, "yarn"> = firstOf(packages, none);
/** Over, once they are bought. */
export const spare: Figure<Mass, "yarn"> = figure("left over", yarnSpare, {
  onHand: there,
  packages,
  packageMass,
  needed: mass,
});
