import {
  averageSett,
  endsForWidth,
  finishedWidth as finishedWidthOf,
  oldPlaces as oldPlacesOf,
  placesToTie,
  reedWidth,
  widthInReed as widthInReedFor,
  widthOfSley,
} from "@thrum/maths";
import type { EndsPerLength, Length } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { always, orNone, these } from "../core/wiring.js";
import { group } from "../core/keys.js";
import { waits } from "../core/waits.js";
import { worked } from "../core/worked.js";
import { dentsByPlace, dentsByYarn, lastDent } from "../parts/dents.js";
import type { Dents } from "../parts/dents.js";
import { isOpen, laid } from "../parts/laid.js";
import type { Laid } from "../parts/laid.js";
import { STRIPES } from "../parts/laid-stripes.js";
import type { LaidStripe } from "../parts/laid-stripes.js";
import { brokenEnds, leftEmpty, mendedPlaces, tooManyEnds } from "../parts/fault-counts.js";
import { roomOnLoom, stripesReaching } from "../parts/room.js";
import { shaftsOf } from "../parts/shafts.js";
import type { Shafts } from "../parts/shafts.js";
import { heddlesTogether } from "../parts/heddles-together.js";
import type { HeddlesTogether } from "../parts/heddles-together.js";
import { isWhole } from "../parts/laid-heddles.js";
import { NOTHING_ADDED, atSides, stepOf } from "../parts/sides.js";
import { waysToAdd } from "../parts/ways-to-add.js";
import type { WayToAdd } from "../parts/ways-to-add.js";
import { tableAfresh, tableTied } from "../parts/table.js";
import type { AtSides, Paired, Table } from "../parts/table.js";
import { standing } from "./join.js";
import { job } from "./keys.js";
import { ofWidth } from "./losses.js";

const { figure, counted, first, part, partBy, firstOf } = worked("plan");
const none = always(null);
const found = { faults: orNone(job.oldWarp.faults, always([])) };

// How many places there are.

/** In the old warp. */
export const broken: Figure<number> = counted("broken", found, brokenEnds);
export const tooMany: Figure<number> = counted("one too many", found, tooManyEnds);
export const empty: Figure<number> = counted("left empty", found, leftEmpty);
export const mended: Figure<number> = counted("mended", found, mendedPlaces);
/** Heddles or floating ends of the old warp, with their part of a dent. */
export const oldPlaces: Figure<number> = figure("old places", oldPlacesOf, {
  threads: job.oldWarp.ends,
  broken,
  tooMany,
});
/** Those that take a new end. They never read the stripes. */
export const places: Figure<number> = figure("places", placesToTie, { places: oldPlaces, leftEmpty: empty, mended });

// The stripes, and how many ends they come to.

/** Wanted, so that the cloth is as wide as wanted. */
export const widthWanted: Figure<Length> = figure("width wanted in the reed", widthInReedFor, {
  finishedWidth: job.cloth.finishedWidth,
  reedToFinished: ofWidth,
});
export const endsWanted: Figure<number> = figure("ends for the width", endsForWidth, {
  sett: job.cloth.sett,
  widthInReed: widthWanted,
  threadingRepeat: always(1),
  balanceEnds: always(0),
});
/** Whether a place in the stripes is left open. */
export const written: Figure<"open" | "closed"> = counted("stripes written", { stripes: job.stripes }, ({ stripes }) =>
  isOpen(stripes, STRIPES) ? "open" : "closed",
);
const closedStripes = part({ stripes: job.stripes }, ({ stripes }) => laid(stripes, STRIPES));
const inPlaces = part({ stripes: job.stripes, places, sides: orNone(group(job.join.sides), none) }, roomOnLoom);
const inWidth = part({ stripes: job.stripes, ends: endsWanted }, stripesReaching);
/** The stripes laid out; only those with an open place wait for the room. */
export const stripes: Part<Laid<LaidStripe>> = partBy(written, {
  closed: closedStripes,
  open: partBy(standing, { tied: firstOf(inPlaces, inWidth), afresh: inWidth }),
});
export const endsOfStripes: Figure<number> = counted(
  "ends of the stripes",
  { stripes },
  (given) => given.stripes.size,
  "SUM(stripe_ends)",
);
/** Those of the stripes; without stripes the places of the old warp. */
export const ends: Figure<number> = first("ends", endsOfStripes, places);

// The loom places.

/** How it is known what is added or dropped at the sides. */
export const sidesBy: Figure<"none" | "as asked" | "heddle by heddle"> = counted(
  "ends at the sides",
  {
    ends,
    places: orNone(places, none),
    loom: orNone(job.loom.threading, none),
    cloth: orNone(job.cloth.threading, none),
  },
  (given) => {
    if (given.places === null) return "none";
    if (isWhole(given.loom) && isWhole(given.cloth)) return "heddle by heddle";
    return given.ends === given.places ? "none" : "as asked";
  },
);
/** The threadings of cloth and loom, both written whole, laid together. */
export const together: Part<HeddlesTogether> = part(
  {
    loom: job.loom.threading,
    cloth: job.cloth.threading,
    oldPlaces,
    newEnds: ends,
    sides: orNone(group(job.join.sides), none),
  },
  ({ sides: asked, ...given }) => heddlesTogether(given, asked),
);
/** The fewest ends that are whole repeats and whole dents; one, where threading or sley is written whole. */
export const step: Part<number> = part(
  { threading: orNone(job.loom.threading, none), sley: orNone(group(job.loom.sley), none) },
  ({ threading, sley }) => stepOf(threading, sley),
);
const sidesAsked = part(
  { sides: group(job.join.sides), ends, places, step },
  (given) =>
    atSides({ sides: given.sides, more: given.ends - given.places, step: given.step }) ?? waits("join", "sides"),
);
const sidesTogether = part({ together }, (given) => given.together.sides ?? waits("join", "sides"));
/** How many are added or dropped at each side; asked only where the numbers differ. */
export const sides: Part<AtSides> = partBy(sidesBy, {
  none: always(NOTHING_ADDED),
  "as asked": sidesAsked,
  "heddle by heddle": sidesTogether,
});
/** The three ways to add them, side by side. */
export const ways: Part<readonly WayToAdd[]> = part(
  {
    threads: job.oldWarp.ends,
    ...found,
    ends,
    places,
    step,
    threading: job.loom.threading,
    sley: orNone(job.loom.sley.places, none),
    room: orNone(group(job.loom.room), none),
  },
  ({ threads, faults, ends: wanted, places: there, room, ...given }) =>
    waysToAdd({ oldWarp: { threads, faults }, more: wanted - there, room: room ?? {}, ...given }),
);
const allAfter = part({ ends, places }, (given) => ({ before: 0, after: given.ends - given.places }));
/** Until the sides are known, as if all stood after the last. */
export const sidesSoFar: Part<AtSides> = firstOf(sides, allAfter);
/** Whether there is an old warp to tie to; until it is counted, the new ends stand alone. */
export const tableFor: Figure<"tied" | "alone"> = counted(
  "places of",
  { standing, threads: orNone(job.oldWarp.ends, none) },
  (given) => (given.standing === "tied" && given.threads !== null ? "tied" : "alone"),
);
const pairsTogether: Part<readonly Paired[]> = part({ together }, (given) => given.together.pairs);
const noPairs = always<readonly Paired[]>([]);
/** Old places whose heddle holds another number of ends in the cloth. */
export const pairs: Part<readonly Paired[]> = partBy(sidesBy, {
  none: noPairs,
  "as asked": noPairs,
  "heddle by heddle": pairsTogether,
});
const tied = part({ threads: job.oldWarp.ends, ...found, sides: sidesSoFar, pairs }, (given) =>
  tableTied(given, given.sides, given.pairs),
);
const alone = part({ ends }, (given) => tableAfresh(given.ends));
/** The loom places: old end and new end of each, and why it has none. Nothing else numbers ends. */
export const table: Part<Table> = partBy(tableFor, { tied, alone });

// Columns of the table, each waiting for its own key.

export const shafts: Part<Shafts> = part(
  { threading: job.loom.threading, table, ...found, cloth: orNone(job.cloth.threading, none) },
  (given) => shaftsOf(given.threading, given.table, given.faults, given.cloth),
);
/** How the sley is written. */
export const sleyIs: Figure<"by place" | "by yarn"> = counted(
  "sley written",
  { places: orNone(job.loom.sley.places, none), byYarn: orNone(job.loom.sley.byYarn, none) },
  (given) => (given.places !== null ? "by place" : given.byYarn !== null ? "by yarn" : waits("loom", "sley")),
);
const byPlace = part({ sley: job.loom.sley.places, table, ...found }, (given) =>
  dentsByPlace(given.sley, given.table, given.faults),
);
const byYarn = part({ sley: job.loom.sley.byYarn, stripes }, (given) => dentsByYarn(given.sley, given.stripes.runs));
/** The dent of every new end, counted from that of end 1. */
export const dentOf: Part<Dents> = partBy(sleyIs, { "by place": byPlace, "by yarn": byYarn });
/** From that of end 1 to that of the last. */
export const dents: Figure<number> = counted("dents", { dentOf }, (given) => lastDent(given.dentOf));

// Width.

const widthByDents = figure("width in the reed", widthOfSley, { reed: job.loom.reed, dents: these(dents) });
const widthBySett = figure("width in the reed", reedWidth, { ends, sett: job.cloth.sett });
/** By the dents of the loom; where the loom is not given, by the sett. */
export const widthInReed: Figure<Length> = first("width in the reed", widthByDents, widthBySett);
/** Ends to the width, in the mean. */
export const sett: Figure<EndsPerLength> = figure("average sett", averageSett, { ends, widthInReed });
export const finishedWidth: Figure<Length> = figure("finished width", finishedWidthOf, {
  widthInReed,
  reedToFinished: ofWidth,
});
