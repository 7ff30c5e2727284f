export { weftLength } from "./weft-length.js";
export type { WeftLengthInput } from "./weft-length.js";
