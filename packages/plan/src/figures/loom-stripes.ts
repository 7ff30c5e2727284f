import {
  endsInWidth,
  oldPlaces as oldPlacesOf,
  placesToTie,
  widthInReedFromFinished as widthInReedFor,
} from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { always, orNone } from "../core/wiring.js";
import { group } from "../core/keys.js";
import { worked } from "../core/worked.js";
import { isOpen, laid } from "../parts/laid.js";
import type { Laid } from "../parts/laid.js";
import { STRIPES } from "../parts/laid-stripes.js";
import type { LaidStripe } from "../parts/laid-stripes.js";
import { brokenEnds, leftEmpty, mendedPlaces, tooManyEnds } from "../parts/fault-counts.js";
import { roomOnLoom, stripesReaching } from "../parts/room.js";
import { standing } from "./join.js";
import { job } from "./keys.js";
import { ofWidth } from "./losses.js";
const { figure, first, part, partBy, firstOf, counted, word } = worked("plan");
const none = always(null);
const found = { faults: orNone(job.oldWarp.faults, always([])) };

// How many places there are.

/** In the old warp. */
export const broken: Figure<number> = counted("broken", "threads", found, brokenEnds);
export const tooMany: Figure<number> = counted("one too many", "threads", found, tooManyEnds);
export const empty: Figure<number> = counted("left empty", "places", found, leftEmpty);
export const mended: Figure<number> = counted("mended", "places", found, mendedPlaces);
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
export const endsWanted: Figure<number> = figure("ends for the width", endsInWidth, {
  sett: job.cloth.sett,
  width: widthWanted,
});
/** Whether a place in the stripes is left open. */
export const written: Figure<"open" | "closed"> = word("stripes written", { stripes: job.stripes }, ({ stripes }) =>
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
  "ends",
  { stripes },
  (given) => given.stripes.size,
  "SUM(stripe_ends)",
);
/** Those of the stripes; without stripes the places of the old warp. */
export const ends: Figure<number> = first("ends", endsOfStripes, places);
