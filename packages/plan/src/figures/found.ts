import { compare, finishedWidth, lossFromMeasures } from "@thrum/maths";
import type { Length, Loss } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { waits } from "../core/waits.js";
import { field } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { job } from "./keys.js";
import * as loom from "./loom.js";

const { figure, word, choice, part } = worked("plan");
const { found } = job;

/** Of the thread, between two threads tied to the warp. */
export const takeUp: Figure<Loss> = figure("take-up found", lossFromMeasures, {
  before: field(found.takeUp, "before"),
  after: field(found.takeUp, "after"),
});
export const lengthOffLoom: Figure<Loss> = figure("length, off the loom", lossFromMeasures, {
  before: found.length.onLoom,
  after: found.length.offLoom,
});
export const lengthWashed: Figure<Loss> = figure("length, washed and pressed", lossFromMeasures, {
  before: found.length.offLoom,
  after: found.length.finished,
});
/** From the loom to finished. */
export const length: Figure<Loss> = figure("length in all", lossFromMeasures, {
  before: found.length.onLoom,
  after: found.length.finished,
});
/** In the reed, on the first inches. */
export const drawIn: Figure<Loss> = choice(
  "drawn in at the fell",
  word("wider than the reed", { reed: loom.widthInReed, width: found.firstInches.width }, ({ reed, width }) =>
    compare(width, reed) > 0 ? "wider" : "drawn in",
  ),
  {
    "drawn in": figure("drawn in at the fell", lossFromMeasures, {
      before: loom.widthInReed,
      after: found.firstInches.width,
    }),
    wider: part({}, () => waits("found", "firstInches", "width")),
  },
);
/** What the wash may still take of it, if the cloth is to come out as wide as planned. */
export const leftToLose: Figure<Loss> = figure("from the fell to the planned width", lossFromMeasures, {
  before: found.firstInches.width,
  after: loom.finishedWidth,
});
export const widthAtFell: Figure<Loss> = figure("width, reed to fell", lossFromMeasures, {
  before: found.width.inReed,
  after: found.width.atFell,
});
export const widthOffLoom: Figure<Loss> = figure("width, off the loom", lossFromMeasures, {
  before: found.width.atFell,
  after: found.width.offLoom,
});
export const widthWashed: Figure<Loss> = figure("width, washed and pressed", lossFromMeasures, {
  before: found.width.offLoom,
  after: found.width.finished,
});
/** From the reed to finished. */
export const width: Figure<Loss> = figure("width in all", lossFromMeasures, {
  before: found.width.inReed,
  after: found.width.finished,
});
/** From the fell to finished, of a sample or a piece that was measured at both. */
export const widthFromFell: Figure<Loss> = figure("width, fell to finished", lossFromMeasures, {
  before: found.width.atFell,
  after: found.width.finished,
});
/** Planned again, from the first inches. */
export const finishedAgain: Figure<Length> = figure("finished width, planned again", finishedWidth, {
  widthInReed: found.firstInches.width,
  reedToFinished: widthFromFell,
});
