import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";

/**
 * A percentage lost, of what was there before: shrinkage, take-up, narrowing, waste.
 *
 * @example percentLost(10).toString() // "10 % lost"
 */
export const percentLost: Unit<"loss"> = /* @__PURE__ */ unit({
  dimension: "loss",
  name: "percentLost",
  symbol: "%",
  base: "lost",
  size: [1, 100],
});

/**
 * A percentage of what it is added to: crimp, regain, size.
 *
 * @example percentAdded(6).toString() // "6 % added"
 */
export const percentAdded: Unit<"addition"> = /* @__PURE__ */ unit({
  dimension: "addition",
  name: "percentAdded",
  symbol: "%",
  base: "added",
  size: [1, 100],
});

/**
 * A percentage of a whole: of fibre in a blend, of a colour in a warp.
 *
 * @example percentOf(80).toString() // "80 % of a whole"
 */
export const percentOf: Unit<"share"> = /* @__PURE__ */ unit({
  dimension: "share",
  name: "percentOf",
  symbol: "%",
  base: "of a whole",
  size: [1, 100],
});
