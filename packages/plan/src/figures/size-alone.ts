import { packagesToBuy, yarnMass, yarnMassDirect } from "@thrum/maths";
import type { Mass, Money } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { sizes } from "./rows.js";
import { counts, direct, indirect } from "./yarn-thread.js";
import { missing } from "./yarn-there.js";

const { figure, choice, firstOf, its } = worked("size");
const length = own(sizes, "size", "length");

/** Of one package of this size. */
export const mass: Figure<Mass, "size"> = choice("one package", own(sizes, "size", "soldBy"), {
  mass: own(sizes, "size", "mass"),
  length: choice("one package", its(counts), {
    "length to the mass": figure("one package", yarnMass, { length, count: its(indirect) }),
    "mass to the length": figure("one package", yarnMassDirect, { length, count: its(direct) }),
  }),
});
/** Of one package; nobody is asked for it. */
export const price: Part<Money, "size"> = firstOf(own(sizes, "size", "price"));
/** Of this size and no other. */
export const alone: Figure<number, "size"> = figure("packages of this size alone", packagesToBuy, {
  needed: its(missing),
  packageMass: mass,
});
