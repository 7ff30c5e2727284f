import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { centimetres, inches } from "./length.js";

/** Ends in an inch across the warp. */
export const endsPerInch: Unit<"ends per length"> = /* @__PURE__ */ unit({
  dimension: "ends per length",
  name: "endsPerInch",
  symbol: "ends/in",
  of: { length: [1, inches], mass: null },
});

/** Ends in a centimetre across the warp. */
export const endsPerCentimetre: Unit<"ends per length"> = /* @__PURE__ */ unit({
  dimension: "ends per length",
  name: "endsPerCentimetre",
  symbol: "ends/cm",
  of: { length: [1, centimetres], mass: null },
});

/** Dents in an inch of reed. */
export const dentsPerInch: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "dentsPerInch",
  symbol: "dents/in",
  of: { length: [1, inches], mass: null },
});

/** Dents in 10 cm of reed. */
export const dentsPerTenCentimetres: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "dentsPerTenCentimetres",
  symbol: "dents/10 cm",
  of: { length: [10, centimetres], mass: null },
});

/** Picks in an inch along the cloth. */
export const picksPerInch: Unit<"picks per length"> = /* @__PURE__ */ unit({
  dimension: "picks per length",
  name: "picksPerInch",
  symbol: "picks/in",
  of: { length: [1, inches], mass: null },
});

/** Picks in a centimetre along the cloth. */
export const picksPerCentimetre: Unit<"picks per length"> = /* @__PURE__ */ unit({
  dimension: "picks per length",
  name: "picksPerCentimetre",
  symbol: "picks/cm",
  of: { length: [1, centimetres], mass: null },
});

/** Heddles in an inch across one shaft. */
export const heddlesPerInch: Unit<"heddles per length"> = /* @__PURE__ */ unit({
  dimension: "heddles per length",
  name: "heddlesPerInch",
  symbol: "heddles/in",
  of: { length: [1, inches], mass: null },
});

/** Heddles in a centimetre across one shaft. */
export const heddlesPerCentimetre: Unit<"heddles per length"> = /* @__PURE__ */ unit({
  dimension: "heddles per length",
  name: "heddlesPerCentimetre",
  symbol: "heddles/cm",
  of: { length: [1, centimetres], mass: null },
});

/** Threads that lie side by side, touching, in an inch. */
export const diametersPerInch: Unit<"diameters per length"> = /* @__PURE__ */ unit({
  dimension: "diameters per length",
  name: "diametersPerInch",
  symbol: "diameters/in",
  of: { length: [1, inches], mass: null },
});

/** Threads that lie side by side, touching, in a centimetre. */
export const diametersPerCentimetre: Unit<"diameters per length"> = /* @__PURE__ */ unit({
  dimension: "diameters per length",
  name: "diametersPerCentimetre",
  symbol: "diameters/cm",
  of: { length: [1, centimetres], mass: null },
});
