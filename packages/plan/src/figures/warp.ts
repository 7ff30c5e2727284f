import {
  compare,
  fringesInAll,
  lengthInSteps,
  lengthLeft,
  turnsForLength,
  warpForOrder,
  warpOfWoven,
  wovenInOrder,
} from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { worked } from "../core/worked.js";
import { all, wish } from "../core/wiring.js";
import { waste } from "./join.js";
import { job } from "./keys.js";
import { takeUp } from "./losses.js";
import * as piece from "./piece.js";

const { figure, first, word } = worked("plan");

/** All that is woven, the breaks too, at weaving tension. */
export const woven: Figure<Length> = figure("woven in all", wovenInOrder, {
  number: all(piece.number),
  wovenLength: all(piece.woven),
});
/** Warp left unwoven for the fringes. */
export const fringes: Figure<Length> = figure("fringes in all", fringesInAll, {
  number: all(piece.number),
  fringeEachEnd: all(piece.fringe),
});
/** Of every end, in the cloth and its fringes. */
export const inCloth: Figure<Length> = figure("thread in the cloth", warpOfWoven, { woven, takeUp, fringes });
export const needed: Figure<Length> = figure("warp needed", warpForOrder, { woven, takeUp, fringes, loomWaste: waste });
const inSteps = figure("warp in whole steps", lengthInSteps, { needed, step: job.winding.step });
/** Fixed beforehand; else in whole steps where the warp is wound so; else what is needed. */
export const length: Figure<Length> = first("warp to wind", wish(job.warp.length), inSteps, needed);
/** Over, where it is longer than what is needed. */
export const left: Figure<Length> = figure("over", lengthLeft, { length, taken: needed });
export const turns: Figure<number> = figure("turns", turnsForLength, {
  warpLength: length,
  measuredTurn: job.winding.turn,
});
/** Whether the length that is fixed is enough. */
export const holds: Figure<"enough" | "short"> = word("enough warp", { length, needed }, (given) =>
  compare(given.length, given.needed) < 0 ? "short" : "enough",
);
/** Still to be had, where the fixed length is too short. */
export const short: Figure<Length> = figure("short", lengthLeft, { length: needed, taken: length });
/** What one piece more takes. */
export const wovenMore: Figure<Length> = figure("woven for one piece more", wovenInOrder, {
  number: all(piece.more),
  wovenLength: all(piece.woven),
});
export const fringesMore: Figure<Length> = figure("fringes of one piece more", fringesInAll, {
  number: all(piece.more),
  fringeEachEnd: all(piece.fringe),
});
/** Of every end. */
export const more: Figure<Length> = figure("warp for one piece more", warpOfWoven, {
  woven: wovenMore,
  takeUp,
  fringes: fringesMore,
});
