import { compare, fringesInAll, lengthLeft, warpOfWoven, wovenInOrder } from "@thrum/maths";
import type { Length, Loss } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { all, always, orNone } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { takeUp as takeUpFound } from "./found.js";
import { isAskedAbout } from "../parts/against-found.js";
import { knots } from "./join.js";
import { job, nothing } from "./keys.js";
import { takeUp as takeUpPlanned } from "./losses.js";
import * as piece from "./piece.js";
import { entries } from "./possible.js";
import * as remaining from "./remaining.js";

const { figure, choice, word } = worked("plan");

/** By which take-up: one found that is asked about is not reckoned with. */
export const takeUpBy: Figure<"found" | "planned"> = word(
  "take-up to come by",
  { measures: orNone(job.found.takeUp, always(null)) },
  ({ measures }) => (measures === null || isAskedAbout(measures) ? "planned" : "found"),
);
/** As it was found, for what is still to come. */
export const takeUp: Figure<Loss> = choice("take-up to come", takeUpBy, { found: takeUpFound, planned: takeUpPlanned });
/** Tied before the heddles, the old warp fills the back. */
export const wasteToCome: Figure<Length> = choice("waste still to come", knots, {
  "in front of the reed": nothing,
  "behind the reed": nothing,
  "behind the heddles": job.warp.wasteBehind,
  nowhere: job.warp.wasteBehind,
});
/** Of what was measured. */
export const forCloth: Figure<Length> = figure("left for the cloth", lengthLeft, {
  length: job.found.warpLeft,
  taken: wasteToCome,
});
export const woven: Figure<Length> = figure("still to weave", wovenInOrder, {
  number: all(remaining.number),
  wovenLength: all(piece.woven),
});
export const fringes: Figure<Length> = figure("fringes still to come", fringesInAll, {
  number: all(remaining.number),
  fringeEachEnd: all(piece.fringe),
});
export const takes: Figure<Length> = figure("warp they take", warpOfWoven, { woven, takeUp, fringes });
/** Whether so many entries can still be woven, and are in the run at all. */
export const isEnough: Figure<"enough" | "short"> = word(
  "enough for so many",
  { takes, forCloth, entries, numbers: all(piece.entriesOf) },
  ({ takes: warp, forCloth: there, entries: wanted, numbers }) =>
    compare(warp, there) <= 0 && wanted <= numbers.reduce((so, number) => so + number, 0) ? "enough" : "short",
);
