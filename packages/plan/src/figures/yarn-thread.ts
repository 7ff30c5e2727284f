import { countOfLabel, resultantCount, resultantCountDirect } from "@thrum/maths";
import type { DirectCount, IndirectCount } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { always, field, orNone, own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { foldedTimes, singleThread, writtenAs } from "../parts/single-thread.js";
import type { SingleThread } from "../parts/single-thread.js";
import { ownYarn } from "./keys.js";
import { yarns } from "./rows.js";
const { figure, choice, part, counted, word } = worked("yarn");
const name = own(yarns, "yarn", "name");
const none = always(null);
const { count } = ownYarn;

/** How its count is written: by the label, folded of so many, or of the finished thread. */
export const countWritten: Figure<"label" | "folded" | "thread", "yarn"> = word(
  "count written",
  { name, label: orNone(count.label, none), number: orNone(count.number, none) },
  writtenAs,
);
/** What its number counts. */
export const single: Part<SingleThread, "yarn"> = part({ number: count.number }, singleThread);
/** Threads folded in it. */
export const folded: Figure<number, "yarn"> = counted(
  "singles in the thread",
  "plies",
  { number: count.number },
  foldedTimes,
);
/** Whether the count tells length to the mass, or mass to the length. */
export const counts: Figure<"length to the mass" | "mass to the length", "yarn"> = word(
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
  folded: figure("count of the thread", resultantCountDirect, { count: field(single, "direct"), plies: folded }),
  thread: field(single, "direct"),
});
