export { asHtml } from "./as-html.js";
export { asLatex } from "./as-latex.js";
export { asMarkdown } from "./as-markdown.js";
export { asMathML } from "./as-mathml.js";
export { asText, sourceText } from "./as-text.js";
export { explain } from "./explain.js";
export type { ExplainOptions, Told, Working, WorkingInput, WorkingStep } from "./working.js";
export { inWords, singular } from "./words.js";
