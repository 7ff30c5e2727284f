import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { kilometres, metres } from "./length.js";
import { grams } from "./mass.js";

/** Tex: grams in 1000 m. */
export const tex: Unit<"mass per length"> = /* @__PURE__ */ unit({
  dimension: "mass per length",
  name: "tex",
  symbol: "tex",
  of: { mass: [1, grams], length: [1, kilometres] },
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
