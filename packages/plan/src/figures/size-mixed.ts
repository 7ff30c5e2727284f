import type { Figure } from "../core/source.js";
import { own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { ofThisSize } from "../parts/size-rows.js";
import { sizes } from "./rows.js";
import { mixture } from "./yarn-mixture.js";

const { counted, its } = worked("size");

/** Of this size in the cheapest mixture. */
export const inMixture: Figure<number, "size"> = counted(
  "packages in the cheapest mixture",
  "packages",
  { mixture: its(mixture), place: own(sizes, "size", "place") },
  ofThisSize,
);
