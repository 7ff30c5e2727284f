import type { Part } from "../core/source.js";
import { always, field, orNone } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { blendsOutlook } from "../parts/blends.js";
import type { BlendOutlook } from "../parts/blends.js";
import { neighboursOf } from "../parts/neighbours.js";
import type { Neighbours } from "../parts/neighbours.js";
import { colourSeen } from "../parts/colour-seen.js";
import { job } from "./keys.js";
import * as loom from "./loom.js";

const { part } = worked("plan");
const runs = field(loom.stripes, "runs");

/** What chance makes of the blends. */
export const outlook: Part<readonly BlendOutlook[]> = part({ runs }, (given) => blendsOutlook(given.runs));
/** The yarns that lie side by side, and how different they look. */
export const neighbours: Part<readonly Neighbours[]> = part({ runs, yarns: orNone(job.yarns, always({})) }, (given) =>
  neighboursOf(given.runs, colourSeen(given.yarns)),
);
