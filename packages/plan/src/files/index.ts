export { readText, writeWhole } from "../command/files.js";
export { FileTrouble } from "../command/world.js";
export { shownText } from "../text/clean.js";
