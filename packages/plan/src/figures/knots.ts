import { diameterByPeirce, publishedAllowance, spaceInDent } from "@thrum/maths";
import type { IndirectCount, Length } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { waits } from "../core/waits.js";
import { always, field, orNone } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { knotsOfYarns, mostInDent } from "../parts/knots.js";
import type { KnotsOfYarn } from "../parts/knots.js";
import { finishedCount, thickest } from "../parts/thread-diameter.js";
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
/** Of the thickest old thread, as length to the mass. */
export const oldCount: Part<IndirectCount> = part({ yarns: job.oldWarp.yarn }, ({ yarns }) =>
  thickest(yarns.map(finishedCount)),
);
export const oldDiameter: Figure<Length> = figure("across the thickest old thread", diameterByPeirce, {
  count: oldCount,
});
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
