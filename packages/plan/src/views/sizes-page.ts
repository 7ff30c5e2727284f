import { sign } from "@thrum/maths";
import * as join from "../figures/join.js";
import { job } from "../figures/keys.js";
import * as loom from "../figures/loom.js";
import * as losses from "../figures/losses.js";
import * as piece from "../figures/piece.js";
import * as told from "../figures/told.js";
import * as warp from "../figures/warp.js";
import { percent, perLength } from "./formats.js";
import { byTheTape, byTheTapeDown, byTheTapeUp, byTheYard } from "./length-formats.js";
import { ifAny, many, pieceTitle } from "./shown.js";
import { table } from "./table.js";
import { toldOf } from "./told-lines.js";
import { says, shown } from "./view.js";
import type { View } from "./view.js";
import { byWord, optional, where } from "./ways.js";

/** How wide and how long, and why. */
export const sizesPage: View = {
  name: "width-and-length",
  heading: "Width and length",
  blocks: [
    toldOf(told.noStripes),
    optional(
      says`${many(loom.ends, "end")} in ${many(loom.dents, "dent")}, ${shown(loom.sett, perLength)} in the mean.`,
    ),
    says`Width in the reed: ${shown(loom.widthInReed, byTheTape)}.`,
    says`Finished width: ${shown(loom.finishedWidth, byTheTape)}, with ${shown(losses.ofWidth, percent)} lost from the reed to finished.`,
    table(
      "piece",
      { caption: "In the order of weaving" },
      ["entry", pieceTitle],
      ["how many", piece.number],
      ["one on the loom", shown(piece.woven, byTheTape)],
    ),
    says`Woven in all: ${shown(warp.woven, byTheTape)}.`,
    says`Thread in the cloth: ${shown(warp.inCloth, byTheTapeUp)}, with ${shown(losses.takeUp, percent)} taken up.`,
    says`Waste of the new warp: ${shown(join.waste, byTheTapeUp)}.`,
    optional(says`The old warp spares ${shown(join.spared, byTheTapeDown)} of waste at the other end.`),
    says`Warp needed: ${shown(warp.needed, byTheTapeUp)}.`,
    says`Wind ${shown(warp.length, byTheYard)} to each end (${shown(warp.length, byTheTapeUp)}).`,
    optional(says`Wound in steps of ${job.winding.step}.`, says`That is ${many(warp.turns, "turn")} of the reel.`),
    where(
      warp.left,
      (left) => sign(left) !== 0,
      byWord(warp.holds, {
        enough: says`Of it ${shown(warp.left, byTheTapeDown)} is over.`,
        short: says`It is short by ${shown(warp.short, byTheTapeUp)}.`,
      }),
    ),
    optional(says`Each piece more takes ${ifAny(warp.more, byTheTapeUp)} of warp.`),
    says`Lengths are told to the mark of the tape: what is needed above, what is left or spared below. The workings have them whole.`,
  ],
};
