import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { kilometres, metres, yards } from "./length.js";
import { drams, grains, grams, milligrams, ounces, pounds } from "./mass.js";

/** Tex: grams in 1000 m. */
export const tex: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "tex",
  symbol: "tex",
  of: { mass: [1, grams], length: [1, kilometres] },
});

/** Kilotex: grams in a metre, for slivers and rovings. */
export const kilotex: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "kilotex",
  symbol: "ktex",
  of: { mass: [1, grams], length: [1, metres] },
});

/** Decitex: grams in 10,000 m. */
export const decitex: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "decitex",
  symbol: "dtex",
  of: { mass: [1, grams], length: [10, kilometres] },
});

/** Denier as now used: grams in 9000 m. */
export const denier: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "denier",
  symbol: "den",
  of: { mass: [1, grams], length: [9000, metres] },
});

/** Dram silk: drams in 1000 yd. */
export const dramSilk: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "dramSilk",
  symbol: "dram",
  of: { mass: [1, drams], length: [1000, yards] },
});

/** Old English denier: 533 1/3 to the ounce, weighed on 520 yd. */
export const oldEnglishDenier: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "oldEnglishDenier",
  symbol: "old denier",
  of: { mass: [3, ounces], length: [832000, yards] },
});

/** Denier international: units of 0.05 g on 500 m. */
export const internationalDenier: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "internationalDenier",
  symbol: "denier international",
  of: { mass: [1, grams], length: [10, kilometres] },
});

/** Denier of Turin: units of 0.053 g on 476 m. */
export const turinDenier: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "turinDenier",
  symbol: "denier of Turin",
  of: { mass: [53, milligrams], length: [476, metres] },
});

/** Denier of Milan: units of 0.051 g on 476 m. */
export const milanDenier: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "milanDenier",
  symbol: "denier of Milan",
  of: { mass: [51, milligrams], length: [476, metres] },
});

/** Jute and dry-spun flax: pounds in a spyndle of 14,400 yd. */
export const juteCount: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "juteCount",
  symbol: "lb/spyndle",
  of: { mass: [1, pounds], length: [14400, yards] },
});

/** American grain count of woollen yarn: grains in 20 yd. */
export const grainsPer20Yards: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "grainsPer20Yards",
  symbol: "gr/20 yd",
  of: { mass: [1, grains], length: [20, yards] },
});

/** American grain count of roving: grains in 120 yd. */
export const grainsPer120Yards: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "grainsPer120Yards",
  symbol: "gr/120 yd",
  of: { mass: [1, grains], length: [120, yards] },
});
