import {
  compare,
  countOfLabel,
  endsFromYarn,
  endsInAll,
  endsOfMass,
  lengthsTogether,
  longestWarp,
  massOfPackages,
  packagesToBuy,
  piecesAllowed,
  resultantCount,
  resultantDirectCount,
  yarnCost,
  yarnForEnds,
  yarnForWarp,
  yarnInAll,
  yarnLength,
  yarnLengthDirect,
  yarnMass,
  yarnMassDirect,
  yarnMissing,
  yarnMore,
  yarnSpare,
  yarnThere,
  ounces,
} from "@thrum/maths";
import type { DirectCount, IndirectCount, Length, Mass, Money } from "@thrum/maths";
import type { Figure, Part, Source } from "../core/source.js";
import { all, always, field, joined, orNone, own, these } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import type { Sold } from "../job/yarns.js";
import { endsBeside, endsOfYarn } from "../parts/ends-of-yarn.js";
import { heldInParts } from "../parts/held.js";
import type { Held } from "../parts/held.js";
import { foldedTimes, singleThread, writtenAs } from "../parts/single-thread.js";
import type { SingleThread } from "../parts/single-thread.js";
import { largestSold, nothingLike } from "../parts/sold.js";
import * as limit from "./chain-limit.js";
import { job, nothing, ownYarn } from "./keys.js";
import * as loom from "./loom.js";
import { growing } from "./order.js";
import { yarns } from "./rows.js";
import * as warp from "./warp.js";
import * as weft from "./weft.js";

const { figure, counted, choice, firstOf, part, partBy } = worked("yarn");
const name = own(yarns, "yarn", "name");
const none = always(null);
const { count } = ownYarn;

// The thread.

/** How its count is written: by the label, folded of so many, or of the finished thread. */
export const countWritten: Figure<"label" | "folded" | "thread", "yarn"> = counted(
  "count written",
  { name, label: orNone(count.label, none), number: orNone(count.number, none) },
  writtenAs,
);
/** What its number counts. */
export const single: Part<SingleThread, "yarn"> = part({ number: count.number }, singleThread);
/** Threads folded in it. */
export const folded: Figure<number, "yarn"> = counted("singles in the thread", { number: count.number }, foldedTimes);
/** Whether the count tells length to the mass, or mass to the length. */
export const counts: Figure<"length to the mass" | "mass to the length", "yarn"> = counted(
  "kind of count",
  { written: countWritten, single: orNone(single, none) },
  (given) => (given.single?.direct === undefined ? "length to the mass" : "mass to the length"),
);
/** Of the finished thread, length to the mass. */
export const indirect: Figure<IndirectCount, "yarn"> = choice("count of the thread", countWritten, {
  label: figure("count of the thread", countOfLabel, {
    length: field(count.label, "length"),
    mass: field(count.label, "mass"),
  }),
  folded: figure("count of the thread", resultantCount, { count: field(single, "indirect"), plies: folded }),
  thread: field(single, "indirect"),
});
/** Of the finished thread, mass to the length. */
export const direct: Figure<DirectCount, "yarn"> = choice("count of the thread", countWritten, {
  label: field(single, "direct"),
  folded: figure("count of the thread", resultantDirectCount, { count: field(single, "direct"), plies: folded }),
  thread: field(single, "direct"),
});

/** The mass of a length of it, and the length of a mass. */
function massOf(label: string, length: Source<Length, "yarn"> | Source<Length>): Figure<Mass, "yarn"> {
  return choice(label, counts, {
    "length to the mass": figure(label, yarnMass, { length, count: indirect }),
    "mass to the length": figure(label, yarnMassDirect, { length, count: direct }),
  });
}
function lengthOf(label: string, mass: Source<Mass, "yarn">): Figure<Length, "yarn"> {
  return choice(label, counts, {
    "length to the mass": figure(label, yarnLength, { mass, count: indirect }),
    "mass to the length": figure(label, yarnLengthDirect, { mass, count: direct }),
  });
}

// What is needed.

/** Of the stripes; a blend counts for each of its yarns. */
export const ends: Figure<number, "yarn"> = counted(
  "ends",
  { runs: field(loom.stripes, "runs"), name },
  endsOfYarn,
  "SUMPRODUCT(stripe_ends*{row}_share)",
);
/** Wound beside the warp. */
export const beside: Figure<number, "yarn"> = counted(
  "ends beside the warp",
  { extra: orNone(job.winding.extra, always([])), name },
  endsBeside,
);
/** Ends wound. */
export const wound: Figure<number, "yarn"> = figure("ends wound", endsInAll, { ends, beside });
/** Whether it is wound at all. */
export const isWound: Figure<"wound" | "not wound", "yarn"> = counted("wound", { wound }, (given) =>
  given.wound > 0 ? "wound" : "not wound",
);
/** In the whole warp. */
export const inWarp: Figure<Length, "yarn"> = choice("warp", isWound, {
  wound: figure("warp", yarnForEnds, { ends: wound, warpLength: warp.length }),
  "not wound": nothing,
});
/** Of warp and weft. */
export const inAll: Figure<Length, "yarn"> = figure("warp and weft", yarnInAll, {
  warp: inWarp,
  wefts: all(weft.length),
});
export const mass: Figure<Mass, "yarn"> = massOf("mass", inAll);
/** Of one end, as long as the warp. */
export const massOfEnd: Figure<Mass, "yarn"> = massOf("mass of one end", warp.length);

/** Of it alone, where a chain may weigh no more than so much. */
export const mostInChain: Figure<number, "yarn"> = figure("ends of a chain", endsOfMass, {
  mass: limit.mass,
  massOfEnd,
});

// What is there and what is bought.

/** The largest size it is sold in. */
export const largest: Part<Sold, "yarn"> = part({ sold: ownYarn.sold }, largestSold);
/** Whether that is told by its mass or by its length. */
export const soldBy: Figure<"mass" | "length", "yarn"> = counted("sold by", { largest }, (given) =>
  given.largest.mass === undefined ? "length" : "mass",
);
export const packageMass: Figure<Mass, "yarn"> = choice("one package", soldBy, {
  mass: field(largest, "mass"),
  length: massOf("one package", field(largest, "length")),
});
/** What is there, by how it was told. */
export const held: Part<Held, "yarn"> = part({ onHand: ownYarn.onHand }, heldInParts);
/** What of it was told as a length, together. */
export const heldLength: Figure<Length, "yarn"> = figure("told as a length", lengthsTogether, {
  lengths: field(held, "lengths"),
});
export const massOfHeldLength: Figure<Mass, "yarn"> = massOf("told as a length", heldLength);
/** One package for each number of packages that was told. */
export const packagesHeld: Part<readonly Mass[], "yarn"> = part({ held, packageMass }, (given) =>
  given.held.packages.map(() => given.packageMass),
);
export const massOfHeldPackages: Figure<Mass, "yarn"> = figure("told in packages", massOfPackages, {
  number: field(held, "packages"),
  packageMass: packagesHeld,
});
const hasLength = counted("some told as a length", { held }, (given) =>
  given.held.lengths.length > 0 ? "some" : "none",
);
const hasPackages = counted("some told in packages", { held }, (given) =>
  given.held.packages.length > 0 ? "some" : "none",
);
/** Parts of what is there. */
export const lengthsThere: Part<readonly Mass[], "yarn"> = partBy(hasLength, {
  some: these(massOfHeldLength),
  none: always([]),
});
export const packagesThere: Part<readonly Mass[], "yarn"> = partBy(hasPackages, {
  some: these(massOfHeldPackages),
  none: always([]),
});
/** Whether there is any. */
export const isThere: Figure<"some" | "none", "yarn"> = counted("on hand", { held }, (given) =>
  given.held.masses.length + given.held.lengths.length + given.held.packages.length > 0 ? "some" : "none",
);
const noneOfPackage = part({ mass: packageMass }, nothingLike);
export const there: Figure<Mass, "yarn"> = choice("on hand", isThere, {
  some: figure("on hand", yarnThere, { onHand: joined(field(held, "masses"), lengthsThere, packagesThere) }),
  none: firstOf(noneOfPackage, always(ounces(0))),
});
/** More than is there. */
export const missing: Figure<Mass, "yarn"> = figure("missing", yarnMissing, { onHand: there, needed: mass });
export const packages: Figure<number, "yarn"> = figure("packages to buy", packagesToBuy, {
  needed: missing,
  packageMass,
});
/** Those, where it is known. */
export const toBuy: Part<number | null, "yarn"> = firstOf(packages, none);
/** Over, once they are bought. */
export const spare: Figure<Mass, "yarn"> = figure("left over", yarnSpare, {
  onHand: there,
  packages,
  packageMass,
  needed: mass,
});

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
export const leaves: Figure<"some" | "none", "yarn"> = counted(
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
const isInCloth = counted("in the warp of the cloth", { ends }, (given) => (given.ends > 0 ? "some" : "none"));
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
