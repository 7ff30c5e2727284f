export { countFromWrapping } from "./count-from-wrapping.js";
export type { CountFromWrappingInput } from "./count-from-wrapping.js";
export { foldedCount } from "./folded-count.js";
export type { FoldedCountInput } from "./folded-count.js";
