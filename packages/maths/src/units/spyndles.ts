import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { yards } from "./length.js";

// A spindle is another length for cotton than for jute and flax, so each name says whose.

/** Heers of 600 yd, 24 to the spyndle of jute or flax. */
export const heers: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "heers",
  symbol: "heers",
  size: [600, 1, yards],
});

/** Standard hanks of jute of 3600 yd: 12 cuts of 300 yd. */
export const juteHanks: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "juteHanks",
  symbol: "hanks of jute",
  size: [3600, 1, yards],
});

/** Spyndles of jute and flax, 14,400 yd. */
export const juteSpyndles: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "juteSpyndles",
  symbol: "spyndles of jute",
  size: [14400, 1, yards],
});

/** Spindles of cotton, 15,120 yd: 18 hanks. */
export const cottonSpindles: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "cottonSpindles",
  symbol: "spindles of cotton",
  size: [15120, 1, yards],
});
