import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { metres, yards } from "./length.js";
import { grams, ounces } from "./mass.js";

/** Grams to the square metre of cloth. */
export const gramsPerSquareMetre: Unit<"mass per area"> = /* @__PURE__ */ unit({
  dimension: "mass per area",
  name: "gramsPerSquareMetre",
  symbol: "g/m²",
  of: { length: [1, metres], mass: [1, grams] },
});

/** Ounces to the square yard of cloth. */
export const ouncesPerSquareYard: Unit<"mass per area"> = /* @__PURE__ */ unit({
  dimension: "mass per area",
  name: "ouncesPerSquareYard",
  symbol: "oz/sq yd",
  of: { length: [1, yards], mass: [1, ounces] },
});
