export { check } from "./check.js";
export type { Claim } from "./claim.js";
export type { FoundSlip, Verdict } from "./verdict.js";
