import type { Plan } from "../core/row.js";
import * as enough from "./enough.js";
import { fibres } from "./label.js";
import * as possible from "./possible.js";
import { entries, sizes, wefts, yarns } from "./rows.js";
import { ofYarn } from "./searched.js";
import * as warpLeft from "./warp-left.js";

/** The list of figures: what makes its rows, and what its searches go by. */
export const PLAN: Plan = {
  scopes: { piece: entries, yarn: yarns, weft: wefts, size: sizes, fibre: fibres },
  searches: [
    { of: ofYarn, while: enough.isEnough },
    { of: possible.entries, while: warpLeft.isEnough },
  ],
};
