import { breaksBetween } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { all, own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { stillToWeave } from "../parts/still-to-weave.js";
import * as piece from "./piece.js";
import { entries as possible } from "./possible.js";
import { entries } from "./rows.js";

const { figure, choice, counted } = worked("piece");
/** Of this entry, the breaks none. */
export const entriesOf: Figure<number, "piece"> = counted(
  "still possible",
  "entries",
  {
    kind: own(entries, "piece", "kind"),
    most: possible,
    numbers: all(piece.entriesOf),
    place: own(entries, "piece", "index"),
  },
  ({ kind, ...given }) => (kind === "between" ? 0 : stillToWeave(given)),
);
const breaks = figure("breaks still to weave", breaksBetween, { entries: all(entriesOf) });
/** How often it can still be woven. */
export const number: Figure<number, "piece"> = choice("still to weave", own(entries, "piece", "kind"), {
  cloth: entriesOf,
  "at the loom": entriesOf,
  between: breaks,
});
