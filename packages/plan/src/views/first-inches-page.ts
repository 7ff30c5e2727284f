import * as found from "../figures/found.js";
import { job } from "../figures/keys.js";
import * as loom from "../figures/loom.js";
import { byTheTape, percent, perLength } from "./formats.js";
import { says, shown, step } from "./view.js";
import type { View } from "./view.js";
import { blanks, optional } from "./ways.js";

/** The first inches of cloth say whether the plan holds. */
export const firstInchesPage: View = {
  name: "first-inches",
  heading: "First inches",
  blocks: [
    says`Planned: ${shown(job.cloth.picks, perLength)}, and ${shown(loom.widthInReed, byTheTape)} wide in the reed.`,
    step`Weave a few inches, then count the picks and measure the width at the fell, both at weaving tension.`,
    blanks("picks", "width at the fell", "ends, counted in the reed"),
    step`Write what differs into the job under found.firstInches and plan again before the first piece is begun: weft and width follow it.`,
    optional(
      says`Found: ${shown(job.found.firstInches.picks, perLength)}; the weft is reckoned with these.`,
      says`Found at the fell: ${shown(job.found.firstInches.width, byTheTape)}, drawn in by ${shown(found.drawIn, percent)} of the width in the reed.`,
    ),
  ],
};
