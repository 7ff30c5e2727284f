import * as loom from "../figures/loom.js";
import { perLength } from "./formats.js";
import * as yarn from "../figures/yarn.js";
import { many, weighed, weighedDown, yarnName } from "./shown.js";
import { table } from "./table.js";
import { says, shown, step } from "./view.js";
import type { View } from "./view.js";
import { blanks, optional } from "./ways.js";

/** What is kept for the next run. */
export const recordPage: View = {
  name: "record",
  heading: "Record",
  blocks: [
    step`Keep this plan with a sample of the cloth and a thread of each yarn.`,
    says`Now on the loom: ${many(loom.ends, "end")} at ${shown(loom.sett, perLength)} in the mean.`,
    optional(
      table(
        "yarn",
        { caption: "Yarn of this run, as planned" },
        ["yarn", yarnName],
        ["taken", weighed(yarn.mass)],
        ["was short by", weighed(yarn.missing)],
        ["left over", weighedDown(yarn.spare)],
      ),
    ),
    blanks(
      "tied on",
      "cut off",
      "pieces, and of what length",
      "old warp left on the loom",
      "yarn that was short",
      "ends beside the warp, left",
      "what went wrong, and where",
    ),
  ],
};
