export * from "./articles.js";
export * from "./books.js";
