export * from "./loom-stripes.js";
export * from "./loom-places.js";
export * from "./loom-columns.js";
