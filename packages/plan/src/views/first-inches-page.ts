import * as found from "../figures/found.js";
import { job } from "../figures/keys.js";
import * as join from "../figures/join.js";
import * as loom from "../figures/loom.js";
import { percent, perLength } from "./formats.js";
import { byTheTape } from "./length-formats.js";
import { either } from "./shown.js";
import { says, shown, step } from "./view.js";
import type { View } from "./view.js";
import { blanks, optional, unsaid, where } from "./ways.js";

/** The first inches of cloth say whether the plan holds. */
export const firstInchesPage: View = {
  name: "first-inches",
  heading: "First picks",
  blocks: [
    says`Planned: ${shown(job.cloth.picks, perLength)}, and ${shown(loom.widthInReed, byTheTape)} wide in the reed.`,
    optional(
      where(
        join.knots,
        (knots) => knots === "behind the heddles",
        step`Weave the first pick behind the row of knots, not on it.`,
      ),
    ),
    step`Weave ${either("a few inches", "a hand's width")}, then count the picks and measure the width at the fell, both at weaving tension.`,
    blanks("picks", "width at the fell", "ends, counted in the reed"),
    step`Write what differs into the job under found.firstInches and plan again before the first piece is begun: weft and width follow it.`,
    where(
      job.found.firstInches.width,
      () => true,
      unsaid(
        job.found.width.finished,
        step`Wash a sample of this cloth and write its width at the fell and finished into the job under found.width: the finished width is then planned again.`,
      ),
    ),
    optional(
      says`Found: ${shown(job.found.firstInches.picks, perLength)}; the weft is reckoned with these.`,
      says`Found at the fell: ${shown(job.found.firstInches.width, byTheTape)}, drawn in by ${shown(found.drawIn, percent)} of the width in the reed.`,
      says`To come out at the planned ${shown(loom.finishedWidth, byTheTape)}, the wash may take ${shown(found.leftToLose, percent)} of that width.`,
      says`Finished width, planned again: ${shown(found.finishedAgain, byTheTape)}, with ${shown(found.widthFromFell, percent)} lost from the fell to finished.`,
    ),
  ],
};
