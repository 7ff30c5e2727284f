export { forColumns } from "./for-columns.js";
export type { Column } from "./for-columns.js";
