import { hemAtLoom, wovenLength } from "@thrum/maths";
import type { Length, PicksPerLength } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { worked } from "../core/worked.js";
import { orNone, own, wish } from "../core/wiring.js";
import { one as oneBreak } from "./breaks.js";
import { job, nothing, ownPiece } from "./keys.js";
import { ofLength } from "./losses.js";
import { entries } from "./rows.js";

const { figure, first, choice } = worked("piece");
const kind = own(entries, "piece", "kind");

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
