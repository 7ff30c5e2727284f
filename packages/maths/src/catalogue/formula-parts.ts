// What every formula is made of, for the files of single formulas that the build puts beside the main module.
export * from "../engine/formula/index.js";
export * from "../engine/quantity/index.js";
export * from "../engine/refusal.js";
export * from "../engine/numbers.js";
export * from "../units/index.js";
