export * from "./told-loom.js";
export * from "./told-lengths.js";
export * from "./told-yarns.js";
