export { defineCalculation } from "./define-calculation.js";
export { defineUnit } from "./define-unit.js";
export type { OwnUnit } from "./define-unit.js";
export {
  added,
  atLeastZero,
  listOf,
  loss,
  noneOrMore,
  partsToo,
  plainNumber,
  positive,
  reckonedIn,
  share,
  unitFor,
  whole,
} from "../engine/formula/index.js";
export type { Declaration, Slip } from "../engine/formula/declaration.js";
