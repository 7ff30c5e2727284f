import { endsInAll, endsOfMass, yarnForEnds, yarnInAll } from "@thrum/maths";
import type { Length, Mass } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { all, always, field, orNone, own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { endsBeside, endsOfYarn } from "../parts/ends-of-yarn.js";
import * as limit from "./chain-limit.js";
import { job, nothing } from "./keys.js";
import * as loom from "./loom.js";
import { yarns } from "./rows.js";
import * as warp from "./warp.js";
import * as weft from "./weft.js";
import { massOf } from "./yarn-by-count.js";
const { figure, choice, counted, word } = worked("yarn");
const name = own(yarns, "yarn", "name");

/** Of the stripes; a blend counts for each of its yarns. */
export const ends: Figure<number, "yarn"> = counted(
  "ends",
  "ends",
  { runs: field(loom.stripes, "runs"), name },
  endsOfYarn,
  "SUMPRODUCT(stripe_ends*{row}_share)",
);
/** Wound beside the warp. */
export const beside: Figure<number, "yarn"> = counted(
  "ends beside the warp",
  "ends",
  { extra: orNone(job.winding.extra, always([])), name },
  endsBeside,
);
/** Ends wound. */
export const wound: Figure<number, "yarn"> = figure("ends wound", endsInAll, { ends, beside });
/** Whether it is wound at all. */
export const isWound: Figure<"wound" | "not wound", "yarn"> = word("wound", { wound }, (given) =>
  given.wound > 0 ? "wound" : "not wound",
);
/** In the whole warp. */
export const inWarp: Figure<Length, "yarn"> = choice("warp", isWound, {
  wound: figure("warp", yarnForEnds, { ends: wound, warpLength: warp.length }),
  "not wound": nothing,
});
/** Of warp and weft. */
export const inAll: Figure<Length, "yarn"> = figure("warp and weft", yarnInAll, {
  warp: inWarp,
  wefts: all(weft.length),
});
export const mass: Figure<Mass, "yarn"> = massOf("mass", inAll);
/** Of one end, as long as the warp. */
export const massOfEnd: Figure<Mass, "yarn"> = massOf("mass of one end", warp.length);

/** Of it alone, where a chain may weigh no more than so much. */
export const mostInChain: Figure<number, "yarn"> = figure("ends of a chain", endsOfMass, {
  mass: limit.mass,
  massOfEnd,
});
