import { breaksBetween, hemAtLoom, picksInLength, piecesOfOrder, wovenLength } from "@thrum/maths";
import type { Addition, Length, PicksPerLength } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { worked } from "../core/worked.js";
import { all, always, orNone, own, wish } from "../core/wiring.js";
import type { Runs } from "../job/runs.js";
import type { Shots } from "../job/weft.js";
import { laidShots } from "../parts/laid-shots.js";
import type { LaidShots } from "../parts/laid-shots.js";
import { weftKind } from "../parts/weft-of-yarn.js";
import { one as oneBreak } from "./breaks.js";
import { waste } from "./join.js";
import { job, nothing, ownPiece } from "./keys.js";
import { ofLength, takeUp } from "./losses.js";
import { entries } from "./rows.js";
import { ofYarn } from "./searched.js";

const { figure, counted, first, firstOf, choice, part, partBy } = worked("piece");
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

// Its weft.

const jobWeft = job.weft;
/** As written: its own, else the job's. */
export const weftRuns: Part<Runs<Shots>, "piece"> = partBy(kind, {
  cloth: firstOf(wish(ownPiece.weft.stripes), jobWeft.stripes),
  "at the loom": firstOf(wish(ownPiece.weft.stripes), jobWeft.stripes),
  between: firstOf(
    part({ hand: wish(job.betweenPieces.weft) }, ({ hand }): Runs<Shots> => [hand]),
    jobWeft.stripes,
  ),
});
/** How it is woven: in one yarn, in several by turns or together, in stripes. */
export const weftIs: Figure<"plain" | "by turns" | "striped", "piece"> = counted("weft", { runs: weftRuns }, weftKind);
/** Whole picks, where there are stripes. */
export const picksInAll: Figure<number, "piece"> = figure("picks of one", picksInLength, { wovenLength: woven, picks });
const lengths = firstOf(wish(ownPiece.weft.lengths), wish(jobWeft.lengths), always(null));
/** The stripes of one, from its first pick to its last. */
export const weftLaid: Part<readonly LaidShots[], "piece"> = part(
  { runs: weftRuns, woven, picksInAll, picks, lengths, loss: orNone(ofLength, always(null)) },
  laidShots,
);
/** Lost at the two tails of every stripe. */
export const eachStripe: Figure<Length, "piece"> = first(
  "lost at the tails of a stripe",
  wish(ownPiece.weft.eachStripe),
  wish(jobWeft.eachStripe),
  nothing,
);
export const allowance: Figure<Addition, "piece"> = first(
  "allowance",
  wish(ownPiece.weft.allowance),
  jobWeft.allowance,
);
/** Whether anything is allowed for waste. */
export const hasAllowance: Figure<"some" | "none", "piece"> = counted(
  "allowance given",
  { allowance: orNone(allowance, always(null)) },
  (written) => (written.allowance === null ? "none" : "some"),
);

/** The pieces of it; a header, a sample and the breaks are none. */
export const forSale: Figure<number, "piece"> = choice("pieces for sale", kind, {
  cloth: entriesOf,
  "at the loom": always(0),
  between: always(0),
});
