export { calculation, declarationOf, isCalculation } from "./calculation.js";
export type { AnyCalculation, Calculation, Declared, ReportStep, Source } from "./declaration.js";
export { dimensionsOf } from "./dimensions.js";
export type { Powers } from "./dimensions.js";
export { stepsOf } from "./evaluate.js";
export type { Step, Value } from "./evaluate.js";
export { factorInto, intoFrame, outOfFrame } from "./frame.js";
export type { Frame } from "./frame.js";
export {
  anything,
  atLeastZero,
  drawnAs,
  listOf,
  noneOrMore,
  partsToo,
  plainNumber,
  positive,
  positiveEither,
  reckonedIn,
  unitFor,
  whole,
} from "./input.js";
export type { Input, Range } from "./input.js";
export { added, loss, proportionOf, share } from "./percent-input.js";
export { parseLines, parseTree } from "./parse.js";
export { plainFormula, plainTree, scaled } from "./plain-tree.js";
export { readInputs } from "./read.js";
export type { Read } from "./read.js";
export { countsInUnit } from "./reckoned.js";
export { oneOf } from "./word-input.js";
export { limitsOf } from "./wanted.js";
export { run } from "./run.js";
export type { Run } from "./run.js";
export { formulaStyle, namesIn, treeText, withNames, writtenOut } from "./tree.js";
export type { Line, Operator, Tree, Unary } from "./tree.js";
