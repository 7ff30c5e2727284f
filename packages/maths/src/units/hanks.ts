import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { yards } from "./length.js";

// The lengths a reel measures off. A bare "hank" or "lea" means another length in each trade, so each name says whose.

/** Cotton hanks of 840 yd: 7 leas. */
export const cottonHanks: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "cottonHanks",
  symbol: "hanks of cotton",
  size: [840, 1, yards],
});

/** Cotton leas of 120 yd: 80 turns of a reel of 54 in. */
export const cottonLeas: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "cottonLeas",
  symbol: "leas of cotton",
  size: [120, 1, yards],
});

/** Linen leas of 300 yd, which are cuts: 120 turns of a reel of 90 in. */
export const linenLeas: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "linenLeas",
  symbol: "leas of linen",
  size: [300, 1, yards],
});

/** Linen bundles of 60,000 yd: 200 leas, whatever hanks they are tied up in. */
export const linenBundles: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "linenBundles",
  symbol: "bundles of linen",
  size: [60000, 1, yards],
});
