export * from "./yarn-thread.js";
export * from "./yarn-across.js";
export * from "./yarn-needed.js";
export * from "./yarn-there.js";
export * from "./yarn-mixture.js";
export * from "./yarn-bought.js";
export * from "./yarn-allows.js";
