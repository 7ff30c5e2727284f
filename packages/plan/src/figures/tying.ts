import { hoursToJoin } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { always, field, orNone } from "../core/wiring.js";
import { waits } from "../core/waits.js";
import { worked } from "../core/worked.js";
import { STRIPES } from "../parts/laid-stripes.js";
import { laid } from "../parts/laid.js";
import { groupsOf } from "../parts/groups.js";
import type { Group } from "../parts/groups.js";
import { groupsOnLoom } from "../parts/groups-on-loom.js";
import type { GroupOnLoom } from "../parts/groups-on-loom.js";
import { listsAgainstCount } from "../parts/lists-against-count.js";
import { joiningRows } from "../parts/joining-rows.js";
import type { JoiningRow } from "../parts/joining-rows.js";
import { leaseOfOldWarp } from "../parts/lease-of-old-warp.js";
import type { OldLease } from "../parts/lease-of-old-warp.js";
import { oldColours } from "../parts/old-colours.js";
import type { OldColour } from "../parts/old-colours.js";
import { partnersToMake } from "../parts/partners.js";
import type { PartnersToMake } from "../parts/partners.js";
import { shaftCheck } from "../parts/shaft-check.js";
import type { ShaftCheck } from "../parts/shaft-check.js";
import { specialEnds } from "../parts/special-ends.js";
import type { SpecialEnd } from "../parts/special-ends.js";
import type { Told } from "../parts/told.js";
import { standing } from "./join.js";
import { job } from "./keys.js";
import * as loom from "./loom.js";

const { figure, part, partBy, counted } = worked("plan");
const none = always(null);
const faults = orNone(job.oldWarp.faults, always([]));
const runs = field(loom.stripes, "runs");
const columns = { shafts: orNone(loom.shafts, none), dents: orNone(loom.dentOf, none) };

/** Counted, wound, tied and ticked together. */
export const groups: Part<readonly Group[]> = part({ runs, ends: orNone(job.groups, none) }, (given) =>
  groupsOf(given.runs, given.ends),
);
/** What is not plainly one new end to one old one. */
export const special: Part<readonly SpecialEnd[]> = part({ table: loom.table, faults }, (given) =>
  specialEnds(given.table, given.faults),
);
/** The groups as they stand on the loom, to be counted on both warps. */
export const onLoom: Part<readonly GroupOnLoom[]> = part(
  { groups, table: loom.table, special, sides: loom.sides, ...columns },
  (given) => groupsOnLoom(given.groups, given.table, given.special, given),
);
/** The same, once the old warp is counted: what its count is held against. */
export const counting: Part<readonly GroupOnLoom[]> = part({ onLoom, ends: job.oldWarp.ends }, (given) => given.onLoom);
/** Lists written whole that do not come to the count of the old warp. */
export const counts: Part<readonly Told[]> = part(
  {
    standing,
    threads: orNone(job.oldWarp.ends, none),
    broken: loom.broken,
    tooMany: loom.tooMany,
    oldPlaces: orNone(loom.oldPlaces, none),
    threading: orNone(job.loom.threading, none),
    oldStripes: orNone(job.oldWarp.stripes, none),
    dents: orNone(loom.dentOf, none),
  },
  listsAgainstCount,
);
/** In the order in which they are tied; the places wait until it is known which ends are added or dropped. */
export const joining: Part<readonly JoiningRow[]> = partBy(standing, {
  tied: part(
    {
      onLoom,
      ends: job.oldWarp.ends,
      counts,
      order: orNone(job.join.order, always("from end 1" as const)),
      partner: orNone(job.join.partner, none),
    },
    (given) => {
      // Counted again, these agree: until then no end can be told its partner.
      if (given.counts.some(({ standing: is }) => is === "must")) return waits("oldWarp", "ends");
      return joiningRows(given.onLoom, given.order, given.partner);
    },
  ),
  afresh: part({ onLoom }, (given) => joiningRows(given.onLoom, "from end 1", null)),
});
/** New ends without an old one: their partners are made before any knot. */
export const partners: Part<readonly PartnersToMake[]> = part(
  { table: loom.table, sides: loom.sides, ...columns },
  (given) => partnersToMake(given.table, given.shafts, given.dents),
);
/** What rises with each shaft. */
export const check: Part<ShaftCheck> = part({ runs, shafts: loom.shafts }, (given) =>
  shaftCheck(given.runs, given.shafts),
);
/** The shafts that part the old warp end by end. */
export const lease: Part<OldLease> = part(
  { threads: job.oldWarp.ends, faults, threading: job.loom.threading },
  ({ threading, ...oldWarp }) => leaseOfOldWarp(oldWarp, threading),
);
/** The old colours that each group meets. */
export const colours: Part<readonly (readonly OldColour[])[]> = part(
  { groups, table: loom.table, stripes: job.oldWarp.stripes, places: loom.oldPlaces, sides: loom.sides },
  (given) => oldColours(given.groups, given.table, laid(given.stripes, STRIPES, given.places).runs),
);
export const knots: Figure<number> = counted(
  "knots",
  "knots",
  { joining },
  (given) => given.joining.at(-1)?.knotsSoFar ?? 0,
);
export const hours: Figure<number> = figure("hours of tying", hoursToJoin, { knots, knotsPerHour: job.join.perHour });
