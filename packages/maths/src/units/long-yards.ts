import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { inches } from "./length.js";

// Yards that are longer than a yard, as cloth was measured and sold.

/** Yards of the long stick, 36 1/2 in, by which cotton cloth was sold. */
export const longStickYards: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "longStickYards",
  symbol: "yd of 36 1/2 in",
  size: [73, 2, inches],
});

/** Yards as woollens were sold: 37 in each, and a quarter yard over in every ten. */
export const woollenLongYards: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "woollenLongYards",
  symbol: "long yd of woollens",
  size: [379, 10, inches],
});
