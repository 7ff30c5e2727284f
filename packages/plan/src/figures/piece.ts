import { breaksBetween, hemAtLoom, piecesOfOrder, wovenLength } from "@thrum/maths";
import type { Length, PicksPerLength } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { worked } from "../core/worked.js";
import { all, always, orNone, own, wish } from "../core/wiring.js";
import { one as oneBreak } from "./breaks.js";
import { waste } from "./join.js";
import { job, nothing, ownPiece } from "./keys.js";
import { ofLength, takeUp } from "./losses.js";
import { entries } from "./rows.js";

const { figure, counted, first, choice, searched } = worked("piece");
const kind = own(entries, "piece", "kind");
const comesBy = own(entries, "piece", "comesBy");

/** Those of the entry, as found on the first inches, as planned. */
export const picks: Figure<PicksPerLength, "piece"> = first(
  "picks",
  wish(ownPiece.picks),
  wish(job.found.firstInches.picks),
  job.cloth.picks,
);
const hemOfCloth = figure("hem on the loom", hemAtLoom, {
  hemEachEnd: orNone(ownPiece.hemEachEnd, nothing),
  loomToFinished: ofLength,
});
/** Turned under at each end, at weaving tension. */
export const hem: Figure<Length, "piece"> = choice("hem on the loom", kind, {
  cloth: hemOfCloth,
  "at the loom": nothing,
  between: nothing,
});
/** Warp left unwoven at each end. */
export const fringe: Figure<Length, "piece"> = choice("fringe at each end", kind, {
  cloth: orNone(ownPiece.fringeEachEnd, nothing),
  "at the loom": nothing,
  between: nothing,
});
const wovenCloth = figure("woven for one", wovenLength, {
  finishedLength: ownPiece.finishedLength,
  hemEachEnd: orNone(ownPiece.hemEachEnd, nothing),
  loomToFinished: ofLength,
});
/** One, with its hems, at weaving tension. */
export const woven: Figure<Length, "piece"> = choice("one on the loom", kind, {
  cloth: wovenCloth,
  "at the loom": ownPiece.atLoom,
  between: oneBreak,
});
/** None where the number is open. */
export const given: Figure<number, "piece"> = counted(
  "as written",
  { written: own(entries, "piece", "written") },
  ({ written }) => written,
);
/** The number that the yarn on hand allows. */
export const ofYarn: Figure<number, "piece"> = searched("pieces the yarn gives");
const ofWarp = figure("pieces the warp gives", piecesOfOrder, {
  warpLength: job.warp.length,
  loomWaste: waste,
  takeUp,
  otherNumbers: all(given),
  otherWoven: all(woven),
  otherFringes: all(fringe),
  wovenLength: woven,
  fringeEachEnd: fringe,
  breakLength: oneBreak,
});
/** Of this entry, the breaks none. */
export const entriesOf: Figure<number, "piece"> = choice("of these", comesBy, {
  given,
  "the warp gives": ofWarp,
  "the yarn gives": ofYarn,
  between: always(0),
});
const breaks = figure("breaks", breaksBetween, { entries: all(entriesOf) });
/** How often it is woven. */
export const number: Figure<number, "piece"> = choice("number", kind, {
  cloth: entriesOf,
  "at the loom": entriesOf,
  between: breaks,
});
/** How often it is woven more, if one piece more is woven: it and the break before it. */
export const more: Figure<number, "piece"> = choice("one piece more", kind, {
  cloth: own(entries, "piece", "grows"),
  "at the loom": always(0),
  between: always(1),
});
