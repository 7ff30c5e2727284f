import type { Plan } from "../core/work.js";
import { isEnough } from "./enough.js";
import { ofYarn } from "./piece.js";
import { entries, wefts, yarns } from "./rows.js";

/** The list of figures: what makes its rows, and what its searches go by. */
export const PLAN: Plan = {
  scopes: { piece: entries, yarn: yarns, weft: wefts },
  searches: [{ of: ofYarn, while: isEnough }],
};
