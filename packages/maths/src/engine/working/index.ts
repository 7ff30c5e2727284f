export { asMarkdown } from "./as-markdown.js";
export { asText } from "./as-text.js";
export { explain } from "./explain.js";
export type { Working, WorkingStep } from "./explain.js";
export { inWords } from "./words.js";
