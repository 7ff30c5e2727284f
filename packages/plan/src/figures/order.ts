import type { Figure } from "../core/source.js";
import { all, own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { entriesOf } from "./piece.js";
import { entries } from "./rows.js";

const { counted } = worked("plan");

/** Pieces of the entry that grows with the warp and the yarn. */
export const growing: Figure<number> = counted(
  "pieces",
  { numbers: all(entriesOf), grows: all(own(entries, "piece", "grows")) },
  ({ numbers, grows }) => numbers.find((_, at) => grows[at] === 1) ?? 0,
);
