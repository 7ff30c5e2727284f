export { answer } from "./answer.js";
export { checkRows, workingRows } from "./companions.js";
