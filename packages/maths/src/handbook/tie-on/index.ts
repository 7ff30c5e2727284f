export type { Finding, Standing } from "./finding.js";
export { tieOn } from "./tie-on.js";
export type { NewWarp, OldWarp, TieOnReport } from "./tie-on.js";
