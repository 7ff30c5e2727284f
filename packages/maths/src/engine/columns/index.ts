export { forColumns } from "./for-columns.js";
export type { Column } from "./given.js";
export type { LabelledColumn } from "./for-columns.js";
