import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";

/** Metres, the seed of every length. */
export const metres: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "metres",
  symbol: "m",
  size: [1, 1],
});

/** Kilometres of 1000 m. */
export const kilometres: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "kilometres",
  symbol: "km",
  size: [1000, 1, metres],
});

/** Centimetres, 100 to the metre. */
export const centimetres: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "centimetres",
  symbol: "cm",
  size: [1, 100, metres],
});

/** Millimetres, 1000 to the metre. */
export const millimetres: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "millimetres",
  symbol: "mm",
  size: [1, 1000, metres],
});

/** Yards: 0.9144 m exactly (international yard and pound agreement, 1959; NIST SP 811, 2008, appendix B). */
export const yards: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "yards",
  symbol: "yd",
  size: [9144, 10000],
});

/** Feet, 3 to the yard. */
export const feet: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "feet",
  symbol: "ft",
  size: [1, 3, yards],
});

/** Inches, 36 to the yard. */
export const inches: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "inches",
  symbol: "in",
  size: [1, 36, yards],
});

/** Statute miles, 1760 yards; wound yarn is told in them. */
export const miles: Unit<"length"> = /* @__PURE__ */ unit({
  dimension: "length",
  name: "miles",
  symbol: "mi",
  size: [1760, 1, yards],
});
