// Every sentence of the app: a second language is these two files once more.
export { loom } from "./words/loom.js";
export { plan } from "./words/plan.js";
