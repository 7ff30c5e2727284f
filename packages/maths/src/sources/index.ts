export * from "./common-practice.js";
export * from "./declared.js";
