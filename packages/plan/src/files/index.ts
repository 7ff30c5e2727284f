export { faultyJobText } from "../command/faulty-job.js";
export { front } from "../command/front.js";
export { readText } from "../command/read-text.js";
export { isSameFile } from "../command/same-file.js";
export { FileTrouble } from "../command/world.js";
export type { World } from "../command/world.js";
export { writeWhole } from "../command/write-whole.js";
export { shownText } from "../text/clean.js";
