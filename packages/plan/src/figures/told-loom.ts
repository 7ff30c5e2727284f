import type { Part } from "../core/source.js";
import { group } from "../core/keys.js";
import { always, field, orNone } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { againstLeft } from "../parts/against-left.js";
import {
  againstFacing,
  againstNumbers,
  againstSett,
  againstSides,
  timesThreaded,
  whichSide,
} from "../parts/against-loom.js";
import { sleyRepeated } from "../parts/against-yarns.js";
import { againstFoundShafts, againstThreading } from "../parts/disagreements.js";
import { againstKnots } from "../parts/knots-told.js";
import { bareRepeat } from "../parts/laid-heddles.js";
import { openOver } from "../parts/open-over.js";
import { roomAtSides } from "../parts/room-at-sides.js";
import { shaftsOf } from "../parts/shafts.js";
import { tableAfresh } from "../parts/table.js";
import { placesForStripes } from "../parts/against-nothing.js";
import { stillEmpty } from "../parts/still-empty.js";
import type { Told } from "../parts/told.js";
import { job } from "./keys.js";
import * as knotsOf from "./knots.js";
import * as loom from "./loom.js";
import * as tying from "./tying.js";
const { part } = worked("plan");
const none = always(null);
const faults = orNone(job.oldWarp.faults, always([]));
const runs = field(loom.stripes, "runs");
type ToldPart = Part<readonly Told[]>;

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
/** Without stripes, the places of the old warp. */
export const noStripes: ToldPart = part({ places: loom.places, stripes: orNone(job.stripes, none) }, (given) =>
  placesForStripes(given.places, given.stripes !== null),
);
/** Heddles and dents still empty, where the ends are as many as the places. */
export const empty: ToldPart = part(
  { ends: loom.ends, places: loom.places, room: group(job.loom.room) },
  ({ ends, places, room }) => (ends === places ? stillEmpty(room) : []),
);
/** Ends left over where the open place of the stripes does not fill the room whole. */
export const open: ToldPart = part({ stripes: loom.stripes }, (given) => openOver(given.stripes.open));
/** Sleyed by yarn: the dents at which another number of ends begins, for the old ends must stand so already. */
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
