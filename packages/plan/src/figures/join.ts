import { lengthsTogether } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { worked } from "../core/worked.js";
import { always, orNone, these } from "../core/wiring.js";
import type { JobJoin } from "../job/job.js";
import { job } from "./keys.js";

const { figure, choice, word } = worked("plan");

/** Tied to the old warp, or threaded afresh. */
export const standing: Figure<"tied" | "afresh"> = word(
  "tied or threaded afresh",
  { none: orNone(job.oldWarp.none, always(false)) },
  ({ none }) => (none ? "afresh" : "tied"),
);
/** Where the knots are tied; nowhere, where the warp is threaded afresh. */
export const knots: Figure<NonNullable<JobJoin["knots"]> | "nowhere"> = choice("knots tied", standing, {
  tied: job.join.knots,
  afresh: always("nowhere"),
});
/** Warp of the new length that cannot be woven: the old warp stands in for the rest. */
export const waste: Figure<Length> = choice("waste of the new warp", knots, {
  "in front of the reed": job.warp.wasteInFront,
  "behind the reed": job.warp.wasteInFront,
  "behind the heddles": job.warp.wasteBehind,
  nowhere: figure("waste of the new warp", lengthsTogether, {
    lengths: these(job.warp.wasteInFront, job.warp.wasteBehind),
  }),
});
const noLength = always(null);
/** What the old warp stands in for. */
export const spared: Figure<Length | null> = choice("waste spared", knots, {
  "in front of the reed": job.warp.wasteBehind,
  "behind the reed": job.warp.wasteBehind,
  "behind the heddles": job.warp.wasteInFront,
  nowhere: noLength,
});
