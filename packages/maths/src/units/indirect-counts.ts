import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { metres, yards } from "./length.js";
import { kilograms, pounds } from "./mass.js";

/** Cotton count: hanks of 840 yd in a pound. */
export const cottonCount: Unit<"length per mass"> = /* @__PURE__ */ unit({
  dimension: "length per mass",
  name: "cottonCount",
  symbol: "Ne",
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
