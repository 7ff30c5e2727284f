import {
  breaksBetween,
  compare,
  fringesInAll,
  lengthsTogether,
  piecesOfOrder,
  warpOfWoven,
  wovenInOrder,
} from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { waits } from "../core/waits.js";
import { worked } from "../core/worked.js";
import { all, always, own, these } from "../core/wiring.js";
import { one as oneBreak } from "./breaks.js";
import { waste } from "./join.js";
import { job } from "./keys.js";
import { takeUp } from "./losses.js";
import { fringe, woven } from "./piece-length.js";
import { entries } from "./rows.js";
import { ofYarn } from "./searched.js";

const { figure, choice, part, counted, word } = worked("piece");
const kind = own(entries, "piece", "kind");
const comesBy = own(entries, "piece", "comesBy");

/** None where the number is open. */
export const given: Figure<number, "piece"> = counted(
  "as written",
  "entries",
  { written: own(entries, "piece", "written") },
  ({ written }) => written,
);
const fromWarp = figure("pieces the warp gives", piecesOfOrder, {
  warpLength: job.warp.length,
  loomWaste: waste,
  takeUp,
  otherNumbers: all(given),
  otherWoven: all(woven),
  otherFringes: all(fringe),
  wovenLength: woven,
  fringeEachEnd: fringe,
  breakLength: oneBreak,
});
// Whether there is warp for all else: without, the formula has no answer.

/** The entries whose number is written, and the breaks between them. */
export const others: Figure<number, "piece"> = choice("the others", kind, {
  cloth: given,
  "at the loom": given,
  between: figure("breaks", breaksBetween, { entries: all(given) }),
});
const wovenOthers = figure("the others woven", wovenInOrder, { number: all(others), wovenLength: all(woven) });
const fringesOthers = figure("fringes of the others", fringesInAll, {
  number: all(others),
  fringeEachEnd: all(fringe),
});
const othersTake = figure("warp the others take", warpOfWoven, { woven: wovenOthers, takeUp, fringes: fringesOthers });
const besideAll = figure("warp beside the pieces", lengthsTogether, { lengths: these(waste, othersTake) });
const reaches = word("warp for the pieces", { length: job.warp.length, besideAll }, (warp) =>
  compare(warp.length, warp.besideAll) < 0 ? "none" : "some",
);
/** Of this entry, before it is asked whether there is one at all. */
export const most: Figure<number, "piece"> = choice("most of these", comesBy, {
  given,
  "the warp gives": choice("pieces the warp gives", reaches, { some: fromWarp, none: always(0) }),
  "the yarn gives": ofYarn,
  between: always(0),
});
const openNumber = word("open number", { comesBy, most }, (open) => {
  if (open.most > 0 || open.comesBy === "given") return "some";
  return open.comesBy;
});
/** Of this entry, the breaks none; an open number that comes to none waits for more warp or yarn. */
export const entriesOf: Figure<number, "piece"> = choice("of these", openNumber, {
  some: most,
  "the warp gives": part({}, () => waits("warp", "length")),
  "the yarn gives": part({}, () => waits("yarns")),
  between: always(0),
});
const breaks = figure("breaks", breaksBetween, { entries: all(entriesOf) });
/** How often it is woven. */
export const number: Figure<number, "piece"> = choice("number", kind, {
  cloth: entriesOf,
  "at the loom": entriesOf,
  between: breaks,
});
/** How often it is woven more, if one piece more is woven: it and the break before it. */
export const more: Figure<number, "piece"> = choice("one piece more", kind, {
  cloth: own(entries, "piece", "grows"),
  "at the loom": always(0),
  between: always(1),
});
/** The pieces of it; a header, a sample and the breaks are none. */
export const forSale: Figure<number, "piece"> = choice("pieces for sale", kind, {
  cloth: entriesOf,
  "at the loom": always(0),
  between: always(0),
});
