export { formulaEntries, inputEntries } from "./formula-entry.js";
export type { FormulaEntry, InputEntry } from "./formula-entry.js";
export { countSystems, kindEntries } from "./kind-entry.js";
export type { KindEntry } from "./kind-entry.js";
export { loadFormula } from "./load-formula.js";
export { revive } from "./revive.js";
export { unitEntries, unitsOf } from "./unit-entry.js";
export type { UnitEntry } from "./unit-entry.js";
