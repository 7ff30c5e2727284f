import * as found from "../figures/found.js";
import * as loom from "../figures/loom.js";
import { job } from "../figures/keys.js";
import { percent } from "./formats.js";
import { byTheTape } from "./length-formats.js";
import { caution, says, shown, step } from "./view.js";
import type { View } from "./view.js";
import { blanks, optional, under } from "./ways.js";

/** Four moments of one piece: what the next job is made of. */
export const measuresPage: View = {
  name: "measures",
  heading: "Measures",
  blocks: [
    optional(
      says`Planned: ${shown(loom.widthInReed, byTheTape)} in the reed, ${shown(loom.finishedWidth, byTheTape)} finished.`,
    ),
    step`Measure the same piece each time, and write the measures into the job under found: each loss follows from two of them.`,
    step`Tie two threads to the warp a hand's length apart before you weave past them, and measure between them again once woven: that is found.takeUp.`,
    blanks(
      "between two threads on the warp, before",
      "between them, once woven",
      "width in the reed",
      "width at the fell",
      "width off the loom",
      "width washed and pressed",
      "length at weaving tension",
      "length off the loom",
      "length washed and pressed",
      "warp left, from the fell to the knots",
    ),
    optional(
      under(
        "What was found",
        says`Take-up: ${shown(found.takeUp, percent)}.`,
        says`Length, from the loom to finished: ${shown(found.length, percent)}.`,
        says`Of it ${shown(found.lengthOffLoom, percent)} off the loom, then ${shown(found.lengthWashed, percent)} washed and pressed.`,
        says`Width, from the reed to finished: ${shown(found.width, percent)}.`,
        says`Of it ${shown(found.widthAtFell, percent)} to the fell, then ${shown(found.widthOffLoom, percent)} off the loom, then ${shown(found.widthWashed, percent)} washed and pressed; each of the measure before it.`,
        says`Knots an hour: ${job.found.knotsPerHour}.`,
      ),
    ),
    caution`Hot water and wet cloth scald: let it cool before you lift it, and try the wash on a sample first.`,
  ],
};
