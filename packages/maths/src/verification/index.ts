export { cases, selfTest } from "./self-test.js";
export type { SelfTest, VerificationCase } from "./self-test.js";
