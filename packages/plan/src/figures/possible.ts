import type { Figure } from "../core/source.js";
import { worked } from "../core/worked.js";

/** Of the run, counted from its first entry, with the warp that is left. */
export const entries: Figure<number> = worked("plan").searched("still possible");
