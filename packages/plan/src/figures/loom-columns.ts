import { averageSett, finishedWidth as finishedWidthOf, reedWidth, widthOfSley } from "@thrum/maths";
import type { EndsPerLength, Length } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { always, orNone, these } from "../core/wiring.js";
import { waits } from "../core/waits.js";
import { worked } from "../core/worked.js";
import { dentsByPlace, dentsByYarn, lastDent } from "../parts/dents.js";
import type { Dents } from "../parts/dents.js";
import { shaftsOf } from "../parts/shafts.js";
import type { Shafts } from "../parts/shafts.js";
import { job } from "./keys.js";
import { ofWidth } from "./losses.js";
import { stripes, ends } from "./loom-stripes.js";
import { table } from "./loom-places.js";
const { figure, first, part, partBy, counted, word } = worked("plan");
const none = always(null);
const found = { faults: orNone(job.oldWarp.faults, always([])) };

// Columns of the table, each waiting for its own key.

export const shafts: Part<Shafts> = part(
  { threading: job.loom.threading, table, ...found, cloth: orNone(job.cloth.threading, none) },
  (given) => shaftsOf(given.threading, given.table, given.faults, given.cloth),
);
/** How the sley is written. */
export const sleyIs: Figure<"by place" | "by yarn"> = word(
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
export const dents: Figure<number> = counted("dents", "dents", { dentOf }, (given) => lastDent(given.dentOf));

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
