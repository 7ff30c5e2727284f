import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { centimetres } from "./length.js";
import { grams } from "./mass.js";

/** Density of fibre or yarn: grams to the cubic centimetre. */
export const gramsPerCubicCentimetre: Unit<"mass per volume"> = /* @__PURE__ */ unit({
  dimension: "mass per volume",
  name: "gramsPerCubicCentimetre",
  symbol: "g/cm³",
  of: { length: [1, centimetres], mass: [1, grams] },
});

/** Room that a gram takes up: cubic centimetres to the gram. */
export const cubicCentimetresPerGram: Unit<"volume per mass"> = /* @__PURE__ */ unit({
  dimension: "volume per mass",
  name: "cubicCentimetresPerGram",
  symbol: "cm³/g",
  of: { length: [1, centimetres], mass: [1, grams] },
});
