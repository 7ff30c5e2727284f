import * as loom from "../figures/loom.js";
import * as yarn from "../figures/yarn.js";
import { many, yarnName } from "./shown.js";
import { table } from "./table.js";
import { says } from "./view.js";
import type { View } from "./view.js";
import { fromPart, optional } from "./ways.js";

/** The stripes as threads, and how many ends there are of each yarn. */
export const stripesPage: View = {
  name: "stripes",
  heading: "Stripes",
  blocks: [
    says`${many(loom.ends, "end")}, from end 1:`,
    fromPart(loom.stripes, ({ runs }) => [{ is: "picture", stripes: runs }]),
    optional(table("yarn", { caption: "Ends of each yarn" }, ["yarn", yarnName], ["ends", yarn.ends])),
  ],
};
