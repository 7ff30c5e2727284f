export { problem } from "./problem.js";
export type { LineMarks, Problem, ProblemKey, ProblemWanted, Question } from "./sheet.js";
export type { KeyedSlip } from "./slip-key.js";
