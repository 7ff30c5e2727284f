export * from "./size-alone.js";
export * from "./size-mixed.js";
