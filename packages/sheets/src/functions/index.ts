export { answer } from "./answer.js";
export { checkRows, workingRows } from "./companions.js";
export { functions, parametersOf } from "./parameters.js";
export { scriptText } from "./script-text.js";
