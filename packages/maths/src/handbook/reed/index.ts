export { dentsForEnds } from "./dents-for-ends.js";
export type { DentsForEndsInput } from "./dents-for-ends.js";
export { reedWidth } from "./reed-width.js";
export type { ReedWidthInput } from "./reed-width.js";
export { settInReed } from "./sett-in-reed.js";
export type { SettInReedInput } from "./sett-in-reed.js";
