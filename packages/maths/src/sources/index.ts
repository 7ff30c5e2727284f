export * from "./articles.js";
export * from "./books.js";
export * from "./weavers.js";
export * from "./yarn.js";
export * from "./cloth.js";
