import { unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { dentsPerInch, endsPerInch, heddlesPerInch } from "./closeness.js";

// The number of a reed in the systems of the trade, each an exact fraction of dents per inch. Where one name means two
// things both stand here under names that say which.

/** Stockport: dents in 2 in, so that the number is the ends per inch at two in a dent. */
export const stockportReed: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "stockportReed",
  symbol: "Stockport",
  size: [1, 2, dentsPerInch],
});

/** Bolton: beers of 20 dents in 24 1/4 in. */
export const boltonReed: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "boltonReed",
  symbol: "Bolton",
  size: [80, 97, dentsPerInch],
});

/** Blackburn: beers of 20 dents in 45 in. */
export const blackburnReed: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "blackburnReed",
  symbol: "Blackburn",
  size: [4, 9, dentsPerInch],
});

/** Preston 7-8: beers of 20 dents in 34 in. */
export const prestonReedOf34Inches: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "prestonReedOf34Inches",
  symbol: "Preston 7-8",
  size: [10, 17, dentsPerInch],
});

/** Preston 4-4: beers of 20 dents in 39 in. */
export const prestonReedOf39Inches: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "prestonReedOf39Inches",
  symbol: "Preston 4-4",
  size: [20, 39, dentsPerInch],
});

/** Preston 9-8: beers of 20 dents in 44 in. */
export const prestonReedOf44Inches: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "prestonReedOf44Inches",
  symbol: "Preston 9-8",
  size: [5, 11, dentsPerInch],
});

/** Preston 6-4: beers of 20 dents in 58 in. */
export const prestonReedOf58Inches: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "prestonReedOf58Inches",
  symbol: "Preston 6-4",
  size: [10, 29, dentsPerInch],
});

/** Scotch: dents in 37 in. */
export const scotchReed: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "scotchReed",
  symbol: "Scotch",
  size: [1, 37, dentsPerInch],
});

/** Scotch or Dundee porter: porters of 20 dents in 37 in. */
export const scotchPorter: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "scotchPorter",
  symbol: "porter",
  size: [20, 37, dentsPerInch],
});

/** Irish linen: hundreds of dents in 40 in. */
export const irishReed: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "irishReed",
  symbol: "Irish",
  size: [5, 2, dentsPerInch],
});

/** Macclesfield, for silk: hundreds of dents in 36 in. */
export const macclesfieldReed: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "macclesfieldReed",
  symbol: "Macclesfield",
  size: [25, 9, dentsPerInch],
});

/** Manchester as a dictionary has it: dents in 36 in; Taylor means Stockport by the name. */
export const manchesterReedOf36Inches: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "manchesterReedOf36Inches",
  symbol: "Manchester of 36 in",
  size: [1, 36, dentsPerInch],
});

/** Bradford as a reed: beers of 20 dents in 36 in; as a sett it counts 40 ends. */
export const bradfordReed: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "bradfordReed",
  symbol: "Bradford reed",
  size: [5, 9, dentsPerInch],
});

/** Bradford as a sett: beers of 40 ends in 36 in; as a reed it counts 20 dents. */
export const bradfordSett: Unit<"ends per length"> = /* @__PURE__ */ unit({
  dimension: "ends per length",
  name: "bradfordSett",
  symbol: "Bradford sett",
  size: [10, 9, endsPerInch],
});

/** Leeds sett: porters of 38 ends in 9 in. */
export const leedsSett: Unit<"ends per length"> = /* @__PURE__ */ unit({
  dimension: "ends per length",
  name: "leedsSett",
  symbol: "Leeds sett",
  size: [38, 9, endsPerInch],
});

/** Dewsbury sett: beers of 38 ends in 90 in. */
export const dewsburySett: Unit<"ends per length"> = /* @__PURE__ */ unit({
  dimension: "ends per length",
  name: "dewsburySett",
  symbol: "Dewsbury sett",
  size: [19, 45, endsPerInch],
});

/** Sett of Scotch tweed: porters of 40 ends in 37 in. */
export const tweedSett: Unit<"ends per length"> = /* @__PURE__ */ unit({
  dimension: "ends per length",
  name: "tweedSett",
  symbol: "tweed porter",
  size: [40, 37, endsPerInch],
});

/** Bolton as a table of 2015 has it: beers of 20 dents in 24 1/2 in; Taylor and Brooks count on 24 1/4. */
export const boltonReedOf24HalfInches: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "boltonReedOf24HalfInches",
  symbol: "Bolton of 24 1/2 in",
  size: [40, 49, dentsPerInch],
});

/** Scotch hundreds: hundreds of dents in 37 in. */
export const scotchHundreds: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "scotchHundreds",
  symbol: "Scotch hundreds",
  size: [100, 37, dentsPerInch],
});

/** Scotch as a notice of Aberdeen had it in 1778: dents in 40 in. */
export const scotchReedOf40Inches: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "scotchReedOf40Inches",
  symbol: "Scotch of 40 in",
  size: [1, 40, dentsPerInch],
});

/** Leeds as a reed: porters of 19 dents in 9 in; as a sett it counts 38 ends. */
export const leedsReed: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "leedsReed",
  symbol: "Leeds reed",
  size: [19, 9, dentsPerInch],
});

/** Pitch of a carpet: reed spaces in 27 in. */
export const carpetPitch: Unit<"dents per length"> = /* @__PURE__ */ unit({
  dimension: "dents per length",
  name: "carpetPitch",
  symbol: "pitch",
  size: [1, 27, dentsPerInch],
});

/** Stockport number of a heald shaft: heddles in 4 in, so that four shafts of one number make that sett. */
export const stockportHeald: Unit<"heddles per length"> = /* @__PURE__ */ unit({
  dimension: "heddles per length",
  name: "stockportHeald",
  symbol: "Stockport heald",
  size: [1, 4, heddlesPerInch],
});
