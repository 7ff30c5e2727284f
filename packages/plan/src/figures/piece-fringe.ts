import { lengthWithFringe, lossFromMeasures, twistedFringe } from "@thrum/maths";
import type { Length, Loss } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { own, wish } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { ownPiece } from "./keys.js";
import { entries } from "./rows.js";

const { figure, firstOf, choice } = worked("piece");
const kind = own(entries, "piece", "kind");
const { fringeTwist } = ownPiece;
/** What is no piece has no fringe, and nobody is asked for one: it has no finished length either. */
const notAsked = wish(ownPiece.finishedLength);

/** Of the fringe, in twisting. */
export const twist: Figure<Loss, "piece"> = choice("loss of the fringe", kind, {
  cloth: firstOf(
    fringeTwist.lost,
    figure("loss of the fringe", lossFromMeasures, { before: fringeTwist.before, after: fringeTwist.after }),
  ),
  "at the loom": wish(fringeTwist.lost),
  between: wish(fringeTwist.lost),
});
/** At each end, once it is twisted. */
export const twistedAtEachEnd: Figure<Length, "piece"> = choice("fringe, twisted", kind, {
  cloth: figure("fringe, twisted", twistedFringe, { fringeEachEnd: ownPiece.fringeEachEnd, twist }),
  "at the loom": notAsked,
  between: notAsked,
});
/** From tip to tip. */
export const withFringe: Figure<Length, "piece"> = choice("length with its fringe", kind, {
  cloth: figure("length with its fringe", lengthWithFringe, {
    finishedLength: ownPiece.finishedLength,
    fringeEachEnd: twistedAtEachEnd,
  }),
  "at the loom": notAsked,
  between: notAsked,
});
