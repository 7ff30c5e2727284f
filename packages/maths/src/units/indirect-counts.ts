import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { metres, yards } from "./length.js";
import { grams, kilograms, ounces, pounds } from "./mass.js";

/** Cotton count: hanks of 840 yd in a pound. */
export const cottonCount: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "cottonCount",
  symbol: "Ne",
  of: { length: [840, yards], mass: [1, pounds] },
});

/** Spun silk count: hanks of 840 yd in a pound; the number is that of the finished thread. */
export const spunSilkCount: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "spunSilkCount",
  symbol: "spun silk count",
  of: { length: [840, yards], mass: [1, pounds] },
});

/** Worsted count: hanks of 560 yd in a pound. */
export const worstedCount: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "worstedCount",
  symbol: "worsted count",
  of: { length: [560, yards], mass: [1, pounds] },
});

/** Linen count: leas of 300 yd in a pound. */
export const linenCount: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "linenCount",
  symbol: "lea",
  of: { length: [300, yards], mass: [1, pounds] },
});

/** Metric count: lengths of 1000 m in a kilogram. */
export const metricCount: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "metricCount",
  symbol: "Nm",
  of: { length: [1000, metres], mass: [1, kilograms] },
});

/** Yards in a pound, as a label prints them. */
export const yardsPerPound: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "yardsPerPound",
  symbol: "yd/lb",
  of: { length: [1, yards], mass: [1, pounds] },
});

/** Metres in a kilogram, as a label prints them. */
export const metresPerKilogram: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "metresPerKilogram",
  symbol: "m/kg",
  of: { length: [1, metres], mass: [1, kilograms] },
});

/** Thousands of yards in a pound. */
export const typp: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "typp",
  symbol: "typp",
  of: { length: [1000, yards], mass: [1, pounds] },
});

/** American woollen run: lengths of 1600 yd in a pound. */
export const woollenRun: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "woollenRun",
  symbol: "run",
  of: { length: [1600, yards], mass: [1, pounds] },
});

/** American woollen cut: lengths of 300 yd in a pound. */
export const woollenCut: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "woollenCut",
  symbol: "cut",
  of: { length: [300, yards], mass: [1, pounds] },
});

/** Yorkshire skeins: lengths of 1536 yd in 6 lb, which is 256 yd in a pound. */
export const yorkshireSkein: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "yorkshireSkein",
  symbol: "skein",
  of: { length: [1536, yards], mass: [6, pounds] },
});

/** Galashiels cut: lengths of 300 yd in 24 oz, which is 200 yd in a pound. */
export const galashielsCut: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "galashielsCut",
  symbol: "Galashiels cut",
  of: { length: [300, yards], mass: [24, ounces] },
});

/** Alloa woollen count as Davis has it: lengths of 240 yd in a pound; other tables take 480. */
export const alloaOf240: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "alloaOf240",
  symbol: "Alloa count of 240 yd",
  of: { length: [240, yards], mass: [1, pounds] },
});

/** Alloa woollen count as a tex table implies it: lengths of 480 yd in a pound; Davis takes 240. */
export const alloaOf480: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "alloaOf480",
  symbol: "Alloa count of 480 yd",
  of: { length: [480, yards], mass: [1, pounds] },
});

/** Hawick cut: lengths of 300 yd in 26 oz (definition from memory; its factor 2687 was read). */
export const hawickCut: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "hawickCut",
  symbol: "Hawick cut",
  of: { length: [300, yards], mass: [26, ounces] },
});

/** Leicester lamb's wool count: hanks of 176 yd in a pound. */
export const leicesterCount: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "leicesterCount",
  symbol: "Leicester count",
  of: { length: [176, yards], mass: [1, pounds] },
});

/** West of England count: hanks of 320 yd in a pound (from memory). */
export const westOfEnglandCount: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "westOfEnglandCount",
  symbol: "West of England count",
  of: { length: [320, yards], mass: [1, pounds] },
});

/** Yards in an ounce: the Dewsbury count (from memory), and a count of organzine silk. */
export const yardsPerOunce: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "yardsPerOunce",
  symbol: "yd/oz",
  of: { length: [1, yards], mass: [1, ounces] },
});

/** Asbestos and glass, American: lengths of 100 yd in a pound. */
export const americanAsbestosCut: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "americanAsbestosCut",
  symbol: "asbestos cut",
  of: { length: [100, yards], mass: [1, pounds] },
});

/** Asbestos, British: lengths of 50 yd in a pound. */
export const britishAsbestosCount: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "britishAsbestosCount",
  symbol: "British asbestos count",
  of: { length: [50, yards], mass: [1, pounds] },
});

/** French cotton count: lengths of 1000 m in 500 g. */
export const frenchCottonCount: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "frenchCottonCount",
  symbol: "French cotton count",
  of: { length: [1000, metres], mass: [500, grams] },
});
