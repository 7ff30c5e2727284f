import * as cost from "../figures/cost.js";
import { job } from "../figures/keys.js";
import * as price from "../figures/price.js";
import * as yarn from "../figures/yarn.js";
import { money, moneyUp } from "./formats.js";
import { pieceTitle, yarnName } from "./shown.js";
import { table } from "./table.js";
import { says, shown } from "./view.js";
import type { View } from "./view.js";
import { optional } from "./ways.js";

/** What the run costs, and the price that leaves no loss. */
export const costPage: View = {
  name: "cost",
  heading: "Cost and least price",
  blocks: [
    table("yarn", { caption: "Yarn, its waste in it" }, ["yarn", yarnName], ["cost", shown(yarn.cost, money)]),
    says`Work, finishing in it: ${shown(cost.work, money)}.`,
    optional(says`Others: ${shown(job.costs.others, money)}.`),
    says`The whole run costs ${shown(cost.whole, moneyUp)}.`,
    table(
      "piece",
      { caption: "Of one, by the length woven for it" },
      ["entry", pieceTitle],
      ["cost", shown(price.cost, moneyUp)],
      ["least price", shown(price.floor, moneyUp)],
    ),
    optional(
      says`Below the least price it is sold at a loss once the seller has kept ${job.costs.commission}. What a piece is worth is not reckoned here.`,
    ),
  ],
};
