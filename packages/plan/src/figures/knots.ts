import { diameterByPeirce, millimetres, publishedAllowance, spaceInDent } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { waits } from "../core/waits.js";
import { always, field, orNone } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { knotsOfYarns, mostInDent } from "../parts/knots.js";
import type { KnotsOfYarn } from "../parts/knots.js";
import { cottonCountOf, finishedCount } from "../parts/thread-diameter.js";
import { job } from "./keys.js";
import * as loom from "./loom.js";

const { figure, choice, part, counted, word } = worked("plan");

/** Whether the gap between two wires was measured. */
export const spaceIs: Figure<"measured" | "the published share of the pitch"> = word(
  "space in a dent known by",
  { gap: orNone(job.loom.gapInDent, always(null)) },
  ({ gap }) => (gap === null || gap === "not measured" ? "the published share of the pitch" : "measured"),
);
const measured = part({ gap: job.loom.gapInDent }, ({ gap }) =>
  gap === "not measured" ? waits("loom", "gapInDent") : gap,
);
/** Free between two wires of the reed. */
export const space: Figure<Length> = choice("space in a dent", spaceIs, {
  measured,
  "the published share of the pitch": figure("space in a dent", spaceInDent, {
    reed: job.loom.reed,
    open: always(publishedAllowance("free share of a dent, power-loom reed").from),
  }),
});
/** Of the thickest old thread, told in the cotton system. */
export const oldCotton: Figure<number> = counted(
  "count of the thickest old thread, as cotton",
  "cotton count",
  { yarns: job.oldWarp.yarn },
  ({ yarns }) =>
    yarns.length === 0 ? waits("oldWarp", "yarn") : Math.min(...yarns.map((one) => cottonCountOf(finishedCount(one)))),
);
/** In millimetres. */
export const oldAcross: Figure<number> = figure("across the thickest old thread", diameterByPeirce, {
  cottonCount: oldCotton,
});
export const oldDiameter: Part<Length> = part({ oldAcross }, (given) => millimetres(given.oldAcross));
/** That stand in one dent. */
export const endsInDent: Figure<number> = counted(
  "most ends of a dent",
  "ends",
  { dents: field(loom.dentOf, "dents") },
  (given) => mostInDent(given.dents),
);
/** Whether they pass, for each yarn of the stripes. */
export const ofYarns: Part<readonly KnotsOfYarn[]> = part(
  {
    stripes: field(loom.stripes, "runs"),
    yarns: job.yarns,
    oldDiameter,
    space,
    endsInDent,
    knot: job.join.knot,
    eye: orNone(job.loom.heddleEye, always(null)),
  },
  knotsOfYarns,
);
