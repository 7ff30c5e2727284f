import { widthOfSley } from "@thrum/maths";
import type { Part } from "../core/source.js";
import { group } from "../core/keys.js";
import { all, always, field, orNone, own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { againstDents, againstMeasures, againstTakeUp } from "../parts/against-found.js";
import { againstLeft } from "../parts/against-left.js";
import { againstEdges, againstStep, againstWarp, againstWeft, surplusOfSteps } from "../parts/against-lengths.js";
import {
  againstFacing,
  againstNumbers,
  againstSett,
  againstSides,
  timesThreaded,
  whichSide,
} from "../parts/against-loom.js";
import {
  againstGrist,
  againstHands,
  nearNames,
  sleyRepeated,
  unusedYarns,
  yarnsToBuy,
} from "../parts/against-yarns.js";
import { againstOrder } from "../parts/chains.js";
import { colourSeen } from "../parts/colour-seen.js";
import { againstFoundShafts, againstThreading } from "../parts/disagreements.js";
import { againstKnots } from "../parts/knots-told.js";
import { hardToTellApart, neighboursOf } from "../parts/neighbours.js";
import { bareRepeat } from "../parts/laid-heddles.js";
import { openOver } from "../parts/open-over.js";
import { roomAtSides } from "../parts/room-at-sides.js";
import { shaftsOf } from "../parts/shafts.js";
import { tableAfresh } from "../parts/table.js";
import type { Told } from "../parts/told.js";
import * as found from "./found.js";
import { job } from "./keys.js";
import * as knotsOf from "./knots.js";
import * as loom from "./loom.js";
import * as losses from "./losses.js";
import * as order from "./order.js";
import * as piece from "./piece.js";
import { entries, yarns as yarnRows } from "./rows.js";
import * as tying from "./tying.js";
import * as warp from "./warp.js";
import * as winding from "./winding.js";
import * as yarn from "./yarn.js";

const { part } = worked("plan");
const none = always(null);
const faults = orNone(job.oldWarp.faults, always([]));
const runs = field(loom.stripes, "runs");
type ToldPart = Part<readonly Told[]>;

// The loom and the old warp.

/** The sett that was wanted against reed and sley. */
export const sett: ToldPart = part(
  { wanted: job.cloth.sett, sett: loom.sett, reed: job.loom.reed, dents: loom.dents },
  (given) => againstSett(given.wanted, given.sett),
);
/** The threading meant for the cloth against the loom's. */
export const threading: ToldPart = part({ cloth: job.cloth.threading, shafts: loom.shafts, ends: loom.ends }, (given) =>
  againstThreading(given.shafts, shaftsOf(given.cloth, tableAfresh(given.ends), [])),
);
/** A shaft found for a broken end, which the threading puts on another. */
export const broken: ToldPart = part({ table: loom.table, threading: job.loom.threading, faults }, (given) =>
  againstFoundShafts(given.table, shaftsOf(given.threading, given.table, given.faults)),
);
/** Threading, old stripes and sley written whole against the count. */
export const count: ToldPart = part({ told: tying.counts }, ({ told }) => told);
const ways = orNone(loom.ways, always([]));
/** Ends against places: what is added, where, and what is short there. */
export const sides: ToldPart = part(
  {
    ends: loom.endsOfStripes,
    places: loom.places,
    sides: loom.sides,
    table: loom.table,
    shafts: loom.shafts,
    dents: orNone(loom.dentOf, none),
    room: orNone(group(job.loom.room), none),
    ways,
  },
  (given) => againstSides(given, given.sides, roomAtSides(given, given.room ?? {}), given.ways),
);
/** Where no side is named: the three ways side by side. */
export const whereAdded: ToldPart = part(
  { ends: loom.endsOfStripes, places: loom.places, sides: orNone(group(job.join.sides), none), ways },
  (given) => {
    if (given.ends === given.places) return [];
    return given.sides === null ? whichSide(given, given.ways) : againstNumbers(given, given.sides);
  },
);
/** How often a bare threading goes in, and what stays open. */
export const repeats: ToldPart = part(
  { ends: loom.ends, places: orNone(loom.places, none), threading: job.loom.threading },
  (given) => {
    const repeat = bareRepeat(given.threading);
    return repeat === null
      ? []
      : timesThreaded(given.ends, repeat.length, given.places !== null && given.places !== given.ends);
  },
);
/** What is over of the open place of the stripes. */
export const open: ToldPart = part({ stripes: loom.stripes }, (given) => openOver(given.stripes.open));
/** By yarn, where the old ends must change their number in a dent. */
export const sley: ToldPart = part({ sley: job.loom.sley.byYarn, runs, dents: field(loom.dentOf, "dents") }, (given) =>
  sleyRepeated(given.sley, given.runs, given.dents),
);
/** What will stand after the cut. */
export const left: ToldPart = part(
  {
    knots: job.join.knots,
    pastReed: job.oldWarp.left.pastReed,
    behindHeddles: job.oldWarp.left.behindHeddles,
  },
  againstLeft,
);
/** The way she faces, where it follows from the knots. */
export const faces: ToldPart = part({ knots: job.join.knots, faces: job.join.faces }, (given) =>
  againstFacing(given.knots, given.faces),
);
/** Whether the knots pass. */
export const knots: ToldPart = part(
  {
    knots: knotsOf.ofYarns,
    tied: job.join.knots,
    space: knotsOf.space,
    spaceIs: knotsOf.spaceIs,
    endsInDent: knotsOf.endsInDent,
  },
  againstKnots,
);

// Lengths.

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

// Yarns, blends and chains.

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
