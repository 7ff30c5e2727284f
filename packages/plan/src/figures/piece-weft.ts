import { picksInLength } from "@thrum/maths";
import type { Addition, Length } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { worked } from "../core/worked.js";
import { always, orNone, own, wish } from "../core/wiring.js";
import type { Runs } from "../job/runs.js";
import type { Shots } from "../job/weft.js";
import { laidShots } from "../parts/laid-shots.js";
import type { LaidShots } from "../parts/laid-shots.js";
import { weftKind } from "../parts/weft-of-yarn.js";
import { job, nothing, ownPiece } from "./keys.js";
import { ofLength } from "./losses.js";
import { picks, woven } from "./piece-length.js";
import { entries } from "./rows.js";

const { figure, first, firstOf, part, partBy, word } = worked("piece");
const kind = own(entries, "piece", "kind");

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
export const weftIs: Figure<"plain" | "by turns" | "striped", "piece"> = word("weft", { runs: weftRuns }, weftKind);
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
export const hasAllowance: Figure<"some" | "none", "piece"> = word(
  "allowance given",
  { allowance: orNone(allowance, always(null)) },
  (written) => (written.allowance === null ? "none" : "some"),
);
