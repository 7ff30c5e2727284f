export { classJob, jobSum } from "./class-job.js";
export type { ClassJob, JobSum, JobSumWanted, SumOfJob } from "./class-job.js";
export type { JudgedBy, JudgedSum } from "./carried.js";
export { problem } from "./problem.js";
export type { LineMarks, Problem, ProblemKey, ProblemWanted, Question } from "./sheet.js";
export type { KeyedSlip } from "./slip-key.js";
