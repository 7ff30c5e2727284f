import type { Figure, Part } from "../core/source.js";
import { all, own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { entriesOf, fringe, hem, woven } from "./piece.js";
import { entries } from "./rows.js";
import { one as oneBreak } from "./breaks.js";
import { tapeOf, wovenEntries } from "../parts/tape.js";
import type { Tape } from "../parts/tape.js";

const { part, counted } = worked("plan");

/** Pieces of the entry that grows with the warp and the yarn. */
export const growing: Figure<number> = counted(
  "pieces",
  "pieces",
  { numbers: all(entriesOf), grows: all(own(entries, "piece", "grows")) },
  ({ numbers, grows }) => numbers.find((_, at) => grows[at] === 1) ?? 0,
);
/** Where each piece begins and stops, on a tape pinned to the cloth. */
export const tape: Part<Tape> = part(
  { entries, numbers: all(entriesOf), woven: all(woven), hems: all(hem), fringes: all(fringe), oneBreak },
  (given) => tapeOf(wovenEntries(given), given.oneBreak),
);
