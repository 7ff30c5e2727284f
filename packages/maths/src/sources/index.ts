export type { Source } from "../engine/formula/index.js";
export * from "./articles.js";
export * from "./books.js";
