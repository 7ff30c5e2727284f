import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";

/** Grams, the seed of every mass. */
export const grams: Unit<"mass"> = /* @__PURE__ */ unit({
  dimension: "mass",
  name: "grams",
  symbol: "g",
  size: [1, 1],
});

/** Milligrams, 1000 to the gram. */
export const milligrams: Unit<"mass"> = /* @__PURE__ */ unit({
  dimension: "mass",
  name: "milligrams",
  symbol: "mg",
  size: [1, 1000, grams],
});

/** Kilograms of 1000 g. */
export const kilograms: Unit<"mass"> = /* @__PURE__ */ unit({
  dimension: "mass",
  name: "kilograms",
  symbol: "kg",
  size: [1000, 1, grams],
});

/** Avoirdupois pounds: 453.59237 g exactly (international yard and pound agreement, 1959; NIST SP 811, 2008, appendix B). */
export const pounds: Unit<"mass"> = /* @__PURE__ */ unit({
  dimension: "mass",
  name: "pounds",
  symbol: "lb",
  size: [45359237, 100000],
});

/** Avoirdupois ounces, 16 to the pound. */
export const ounces: Unit<"mass"> = /* @__PURE__ */ unit({
  dimension: "mass",
  name: "ounces",
  symbol: "oz",
  size: [1, 16, pounds],
});

/** Avoirdupois drams, 256 to the pound. */
export const drams: Unit<"mass"> = /* @__PURE__ */ unit({
  dimension: "mass",
  name: "drams",
  symbol: "dr",
  size: [1, 256, pounds],
});

/** Grains, 7000 to the pound. */
export const grains: Unit<"mass"> = /* @__PURE__ */ unit({
  dimension: "mass",
  name: "grains",
  symbol: "gr",
  size: [1, 7000, pounds],
});
