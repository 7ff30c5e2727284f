export * from "./yarn/index.js";
export * from "./weave/index.js";
export * from "./sett/index.js";
export * from "./cloth/index.js";
export * from "./reed/index.js";
export * from "./warp/index.js";
export * from "./weft/index.js";
export * from "./tie-on/index.js";
