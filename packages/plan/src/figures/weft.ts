import { weftByTurns, weftOfPieces, weftOfPlain, weftOfStripes, yarnWithAllowance } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { picksOfYarn, shotsInRound, stripesOfYarn, threadsInRound } from "../parts/weft-of-yarn.js";
import * as loom from "./loom.js";
import * as piece from "./piece.js";
import { wefts } from "./rows.js";

const { figure, choice, counted, its } = worked("weft");
const yarn = own(wefts, "weft", "yarn");
const runs = its(piece.weftRuns);
const shared = {
  wovenLength: its(piece.woven),
  picks: its(piece.picks),
  widthInReed: loom.widthInReed,
  eachStripe: its(piece.eachStripe),
};

/** Of this yarn in one round of shots. */
export const threads: Figure<number, "weft"> = counted("threads in a round", "threads", { runs, yarn }, threadsInRound);
/** In one round, those of other yarns too. */
export const shots: Figure<number, "weft"> = counted("shots in a round", "shots", { runs }, shotsInRound);
/** Of this yarn in the piece. */
export const picks: Figure<number, "weft"> = counted(
  "picks",
  "picks",
  { laid: its(piece.weftLaid), yarn },
  picksOfYarn,
);
export const stripes: Figure<number, "weft"> = counted(
  "stripes",
  "stripes",
  { laid: its(piece.weftLaid), yarn },
  stripesOfYarn,
);
/** Laid straight in one piece, its tails too. */
export const one: Figure<Length, "weft"> = choice("weft of one", its(piece.weftIs), {
  plain: figure("weft of one", weftOfPlain, shared),
  "by turns": figure("weft of one", weftByTurns, { ...shared, threads, shots }),
  striped: figure("weft of one", weftOfStripes, {
    picks,
    widthInReed: loom.widthInReed,
    stripes,
    eachStripe: its(piece.eachStripe),
  }),
});
const allowed = figure("with the allowance", yarnWithAllowance, { yarn: one, allowance: its(piece.allowance) });
/** With what is allowed for waste, where anything is. */
export const withAllowance: Figure<Length, "weft"> = choice("with the allowance", its(piece.hasAllowance), {
  some: allowed,
  none: one,
});
/** In all of them. */
export const length: Figure<Length, "weft"> = figure("weft", weftOfPieces, {
  number: its(piece.number),
  weft: withAllowance,
});
/** What one piece more takes. */
export const more: Figure<Length, "weft"> = figure("weft of one piece more", weftOfPieces, {
  number: its(piece.more),
  weft: withAllowance,
});
