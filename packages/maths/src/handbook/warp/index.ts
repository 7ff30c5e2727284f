export { endsForWidth } from "./ends-for-width.js";
export type { EndsForWidthInput } from "./ends-for-width.js";
export { packagesToBuy } from "./packages-to-buy.js";
export type { PackagesToBuyInput } from "./packages-to-buy.js";
export { warpLength } from "./warp-length.js";
export type { WarpLengthInput } from "./warp-length.js";
export { yarnForEnds } from "./yarn-for-ends.js";
export type { YarnForEndsInput } from "./yarn-for-ends.js";
