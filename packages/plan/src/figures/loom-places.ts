import type { Figure, Part } from "../core/source.js";
import { always, orNone } from "../core/wiring.js";
import { group } from "../core/keys.js";
import { waits } from "../core/waits.js";
import { worked } from "../core/worked.js";
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
import { oldPlaces, places, ends } from "./loom-stripes.js";
const { part, partBy, firstOf, word } = worked("plan");
const none = always(null);
const found = { faults: orNone(job.oldWarp.faults, always([])) };

/** How it is known what is added or dropped at the sides. */
export const sidesBy: Figure<"none" | "as asked" | "heddle by heddle"> = word(
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
export const tableFor: Figure<"tied" | "alone"> = word(
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
