export {
  compare,
  difference,
  equal,
  inUnit,
  isQuantity,
  isUnit,
  ratio,
  sign,
  sum,
  times,
  unitOf,
} from "./engine/quantity/index.js";
export type { Kind, Quantity, TextOptions, Unit, UnitParts } from "./engine/quantity/index.js";
export { attempt, faultsText, faultText, isThrumError, pathText, QuantityError } from "./engine/refusal.js";
export type { Fault, FaultParams, FaultPath, Faults, Reading, RefusalCode, ThrumError } from "./engine/refusal.js";
export { isCalculation } from "./engine/formula/index.js";
export type {
  AnyCalculation,
  Calculation,
  Declared,
  Input,
  Line,
  Range,
  ReportStep,
  Source,
} from "./engine/formula/index.js";
export { asHtml, asLatex, asMarkdown, asMathML, asText, explain, inWords, sourceText } from "./engine/working/index.js";
export type { ExplainOptions, Told, Working, WorkingInput, WorkingStep } from "./engine/working/index.js";
export { solveFor } from "./engine/solve/index.js";
export type { Turned, TurnedInput } from "./engine/solve/index.js";
export { check, checkSteps, digitsEarned, firstWrongLine } from "./check/index.js";
export type {
  Claim,
  DigitsEarned,
  Fact,
  FoundPair,
  FoundPairs,
  FoundSlip,
  JudgedLine,
  LineOptions,
  OwnStep,
  Verdict,
  WrittenLine,
} from "./check/index.js";
export { classJob, jobSum, problem } from "./teach/index.js";
export type { ClassJob, JobSum, JobSumWanted, JudgedBy, JudgedSum, SumOfJob } from "./teach/index.js";
export type { KeyedSlip, LineMarks, Problem, ProblemKey, ProblemWanted, Question } from "./teach/index.js";
export { isDefinedName, spreadsheetFormula, spreadsheetLines } from "./engine/spreadsheet/index.js";
export type { Cell, SpreadsheetLine } from "./engine/spreadsheet/index.js";
export { forColumns } from "./engine/columns/index.js";
export type { Column, LabelledColumn } from "./engine/columns/index.js";
export * from "./units/index.js";
export * from "./handbook/index.js";
