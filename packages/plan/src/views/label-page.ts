import * as fibre from "../figures/fibre.js";
import { percent } from "./formats.js";
import { byTheScale } from "./mass-formats.js";
import { rowWord } from "./shown.js";
import { table } from "./table.js";
import { says, shown } from "./view.js";
import type { View } from "./view.js";

/** The shares of the fibres. */
export const labelPage: View = {
  name: "label",
  heading: "Fibres for the label",
  blocks: [
    table(
      "fibre",
      { caption: "Shares by mass, of the yarn left in the pieces" },
      ["fibre", rowWord],
      ["in the pieces", shown(fibre.mass, (mass, units) => byTheScale(mass, units))],
      ["by dry mass", shown(fibre.byDryMass, percent)],
      ["with the agreed regain", shown(fibre.byConditionedMass, percent)],
    ),
    says`Which mass counts, which regain, how it is rounded and what else a label must say the law of the place of sale decides: ask there.`,
  ],
};
