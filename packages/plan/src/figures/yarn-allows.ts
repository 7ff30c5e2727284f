import {
  compare,
  endsFromYarn,
  lengthsTogether,
  longestWarp,
  piecesAllowed,
  yarnCost,
  yarnForEnds,
  yarnForWarp,
  yarnInAll,
  yarnMore,
} from "@thrum/maths";
import type { Length, Mass, Money } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { all, always, field, joined, these } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { nothing } from "./keys.js";
import { growing } from "./order.js";
import * as warp from "./warp.js";
import * as weft from "./weft.js";
import { ends, wound, inAll, mass } from "./yarn-needed.js";
import { largest, packageMass, there } from "./yarn-there.js";
import { lengthOf, massOf } from "./yarn-by-count.js";
const { figure, choice, word } = worked("yarn");

// What it allows.

export const lengthThere: Figure<Length, "yarn"> = lengthOf("on hand, as a length", there);
/** Once its weft is set aside. */
export const forWarp: Figure<Length, "yarn"> = figure("on hand for the warp", yarnForWarp, {
  yarn: lengthThere,
  wefts: all(weft.length),
});
export const weftInAll: Figure<Length, "yarn"> = figure("weft", lengthsTogether, {
  lengths: joined(these(nothing), all(weft.length)),
});
/** Whether its weft leaves any of what is on hand for the warp. */
export const leaves: Figure<"some" | "none", "yarn"> = word(
  "left by the weft",
  { there: lengthThere, weft: weftInAll },
  (given) => (compare(given.there, given.weft) > 0 ? "some" : "none"),
);
/** At this length of warp. */
export const endsEnough: Figure<number, "yarn"> = choice("ends it is enough for", leaves, {
  some: figure("ends it is enough for", endsFromYarn, { yarn: forWarp, warpLength: warp.length }),
  none: always(0),
});
/** At these ends. */
export const longest: Figure<Length, "yarn"> = choice("longest warp", leaves, {
  some: figure("longest warp", longestWarp, { yarn: forWarp, ends: wound }),
  none: nothing,
});
export const more: Figure<Length, "yarn"> = figure("for one piece more", yarnMore, {
  ends: wound,
  warpMore: warp.more,
  wefts: all(weft.more),
});
/** Pieces, and the part of one. */
export const allowed: Figure<number, "yarn"> = figure("pieces it allows", piecesAllowed, {
  pieces: growing,
  onHand: lengthThere,
  needed: inAll,
  oneMore: more,
});

// What it costs, and what is left of it in the pieces.

export const cost: Figure<Money, "yarn"> = figure("cost of the yarn", yarnCost, {
  yarn: mass,
  price: field(largest, "price"),
  priceMass: packageMass,
});
const isInCloth = word("in the warp of the cloth", { ends }, (given) => (given.ends > 0 ? "some" : "none"));
/** Of the warp, without its waste. */
export const warpInPieces: Figure<Length, "yarn"> = choice("warp in the pieces", isInCloth, {
  some: figure("warp in the pieces", yarnForEnds, { ends, warpLength: warp.inCloth }),
  none: nothing,
});
export const inPieces: Figure<Length, "yarn"> = figure("in the pieces", yarnInAll, {
  warp: warpInPieces,
  wefts: all(weft.length),
});
export const massInPieces: Figure<Mass, "yarn"> = massOf("mass in the pieces", inPieces);
