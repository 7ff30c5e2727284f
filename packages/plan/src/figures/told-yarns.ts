import { againstOrder } from "../parts/chains.js";
import type { Part } from "../core/source.js";
import { all, always, field, orNone, own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { againstGrist, againstHands, nearNames, unusedYarns, yarnsToBuy } from "../parts/against-yarns.js";
import { colourSeen } from "../parts/colour-seen.js";
import { hardToTellApart, neighboursOf } from "../parts/neighbours.js";
import type { Told } from "../parts/told.js";
import { job } from "./keys.js";
import * as loom from "./loom.js";
import { yarns as yarnRows } from "./rows.js";
import * as winding from "./winding.js";
import * as yarn from "./yarn.js";
const { part } = worked("plan");
const none = always(null);
const runs = field(loom.stripes, "runs");
type ToldPart = Part<readonly Told[]>;

/** Old and new yarn by their weight for the length. */
export const grist: ToldPart = part({ runs, yarns: job.yarns, old: job.oldWarp.yarn }, (given) =>
  againstGrist(given.runs, given.yarns, given.old),
);
/** Blends wound by their own hand. */
export const hands: ToldPart = part({ runs, threads: job.winding.threads }, (given) =>
  againstHands(given.runs, given.threads),
);
/** Chains of several colours, tied one colour at a time. */
export const chains: ToldPart = part({ chains: winding.chains, order: orNone(job.join.order, none) }, (given) => [
  ...given.chains.tooWide,
  ...againstOrder(given.chains.chains, given.order),
]);
/** Neighbours that are hard to tell apart. */
export const neighbours: ToldPart = part({ runs, yarns: job.yarns }, (given) =>
  hardToTellApart(neighboursOf(given.runs, colourSeen(given.yarns))),
);
/** Yarns that nothing uses. */
export const unused: ToldPart = part({ yarns: job.yarns, used: all(own(yarnRows, "yarn", "name")) }, (given) =>
  unusedYarns(given.yarns, given.used),
);
/** Names that are near each other, where there is no list of yarns. */
export const names: ToldPart = part({ runs, yarns: orNone(job.yarns, none) }, (given) =>
  given.yarns === null ? nearNames(given.runs) : [],
);
/** What is to be bought. */
export const toBuy: ToldPart = part({ names: all(own(yarnRows, "yarn", "name")), packages: all(yarn.toBuy) }, (given) =>
  yarnsToBuy(given.names, given.packages),
);
