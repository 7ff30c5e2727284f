export { settInReed } from "./sett-in-reed.js";
export type { SettInReedInput } from "./sett-in-reed.js";
