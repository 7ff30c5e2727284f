import { widthOfSley } from "@thrum/maths";
import type { Part } from "../core/source.js";
import { group } from "../core/keys.js";
import { all, always, orNone, own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { againstDents, againstMeasures, againstTakeUp } from "../parts/against-found.js";
import { againstEdges, againstStep, againstWarp, againstWeft, surplusOfSteps } from "../parts/against-lengths.js";
import { noneFromWarp, noneFromYarn, widerThanReed } from "../parts/against-nothing.js";
import type { Told } from "../parts/told.js";
import * as found from "./found.js";
import { waste } from "./join.js";
import { job } from "./keys.js";
import * as loom from "./loom.js";
import * as losses from "./losses.js";
import * as order from "./order.js";
import * as piece from "./piece.js";
import { entries, yarns } from "./rows.js";
import * as warp from "./warp.js";
import { isThere } from "./yarn-there.js";
const { part } = worked("plan");
const none = always(null);
type ToldPart = Part<readonly Told[]>;

/** A warp fixed beforehand against the pieces. */
export const length: ToldPart = part(
  {
    length: job.warp.length,
    needed: warp.needed,
    more: orNone(warp.more, none),
    pieces: order.growing,
    entries,
  },
  ({ entries: rows, ...given }) =>
    againstWarp({ ...given, title: rows.find(({ grows }) => grows === 1)?.title ?? null }),
);
/** A warp fixed beforehand that gives no piece at all. */
export const noneOfWarp: ToldPart = part(
  {
    entries,
    length: job.warp.length,
    waste,
    more: orNone(warp.more, none),
    pieces: all(piece.most),
  },
  noneFromWarp,
);
/** Yarn on hand that gives no piece at all. */
export const noneOfYarn: ToldPart = part(
  { entries, pieces: all(piece.most), names: all(own(yarns, "yarn", "name")), there: all(isThere) },
  noneFromYarn,
);
/** The first inches against the reed. */
export const atFell: ToldPart = part({ found: job.found.firstInches.width, reed: loom.widthInReed }, (given) =>
  widerThanReed(given.found, given.reed),
);
/** A warp fixed beforehand against the steps from peg to peg. */
export const step: ToldPart = part({ length: job.warp.length, step: job.winding.step }, (given) =>
  againstStep(given.length, given.step),
);
/** What whole steps bring above what is needed. */
export const surplus: ToldPart = part(
  { fixed: orNone(job.warp.length, none), needed: warp.needed, step: job.winding.step },
  (given) => (given.fixed === null ? surplusOfSteps(given.needed, given.step) : []),
);
/** Hem and fringe on one piece, and fringes that the waste could give. */
export const edges: ToldPart = part({ pieces: job.pieces }, (given) => againstEdges(given.pieces));
/** Weft stripes shorter than their piece. */
export const weft: ToldPart = part(
  {
    entries,
    kinds: all(piece.weftIs),
    laid: all(piece.weftLaid),
    picks: all(piece.picksInAll),
  },
  againstWeft,
);
/** A take-up above 25 %. */
export const takeUp: ToldPart = part({ takeUp: losses.takeUp }, (given) => againstTakeUp(given.takeUp, "cloth"));
export const takeUpFound: ToldPart = part({ takeUp: found.takeUp }, (given) => againstTakeUp(given.takeUp, "found"));
/** Measures that grow. */
export const measures: ToldPart = part({ found: group(job.found) }, (given) => againstMeasures(given.found));
/** The width in the reed, as measured, against the dents. */
export const inReed: ToldPart = part(
  { inReed: job.found.width.inReed, reed: job.loom.reed, dents: loom.dents },
  (given) =>
    againstDents(
      given.inReed,
      widthOfSley({ reed: given.reed, dents: [given.dents] }),
      widthOfSley({ reed: given.reed, dents: [1] }),
    ),
);
