export { endsForWidth } from "./ends-for-width.js";
export type { EndsForWidthInput } from "./ends-for-width.js";
export { warpLength } from "./warp-length.js";
export type { WarpLengthInput } from "./warp-length.js";
