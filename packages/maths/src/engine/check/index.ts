export { check } from "./check.js";
export type { FoundSlip, Verdict } from "./check.js";
export type { Claim } from "./claim.js";
