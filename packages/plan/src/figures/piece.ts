export * from "./piece-length.js";
export * from "./piece-fringe.js";
export * from "./piece-number.js";
export * from "./piece-weft.js";
