export { check } from "./check.js";
export type { Claim } from "./claim.js";
export { digitsEarned } from "./digits-earned.js";
export type { DigitsEarned } from "./digits-earned.js";
export { firstWrongLine } from "./first-wrong-line.js";
export type { JudgedLine } from "./first-wrong-line.js";
export type { FoundSlip, Verdict } from "./verdict.js";
