export { check } from "./check.js";
export type { Claim, FoundSlip, Verdict } from "./check.js";
