import { lengthOfPicks } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { worked } from "../core/worked.js";
import { always, orNone } from "../core/wiring.js";
import { job, nothing } from "./keys.js";

const { figure, choice, word } = worked("plan");
const { length, picks } = job.betweenPieces;
const none = always(null);

/** How the breaks are written. */
export const writtenAs: Figure<"length" | "picks" | "none"> = word(
  "breaks written",
  { length: orNone(length, none), picks: orNone(picks, none) },
  (given) => (given.length !== null ? "length" : given.picks !== null ? "picks" : "none"),
);
/** Woven between two entries and cut away, at weaving tension. */
export const one: Figure<Length> = choice("one break", writtenAs, {
  length,
  picks: figure("one break", lengthOfPicks, { picksInAll: picks, picks: job.cloth.picks }),
  none: nothing,
});
