import * as loom from "../figures/loom.js";
import * as stripe from "../figures/stripe.js";
import * as told from "../figures/told.js";
import * as yarn from "../figures/yarn.js";
import type { BlendOutlook } from "../parts/blends.js";
import { counted } from "../parts/told.js";
import type { Block } from "./block.js";
import { handLine } from "./hands.js";
import { listOf } from "./table.js";
import { many, yarnName } from "./shown.js";
import { table } from "./table.js";
import { toldOf } from "./told-lines.js";
import { says } from "./view.js";
import type { View } from "./view.js";
import { fromPart, optional, under } from "./ways.js";

/** Blends of the same hands and ends are alike, whichever stripe they are. */
function alike(outlook: readonly BlendOutlook[]): readonly (readonly BlendOutlook[])[] {
  const same = new Map<string, BlendOutlook[]>();
  for (const one of outlook) {
    const key = JSON.stringify([one.ends, one.yarns]);
    same.set(key, [...(same.get(key) ?? []), one]);
  }
  return [...same.values()];
}

const outlook = under(
  "What chance makes of the blends",
  fromPart(stripe.outlook, (all, at): readonly Block[] => {
    const rows = alike(all).flatMap(([first, ...others]) => (first === undefined ? [] : [{ first, others }]));
    return [
      ...listOf(
        { caption: "Either colour may come first in each hand: the lease decides" },
        rows,
        [
          ["blend", ({ first }) => handLine({ yarns: first.yarns.map((one) => one.yarn) })],
          ["stripes", ({ first, others }) => [first, ...others].map((one) => String(one.stripe)).join(", ")],
          ["hands", ({ first }) => counted(first.hands, "hand")],
          ["ends of each", ({ first }) => first.yarns.map((one) => String(one.ends)).join(" + ")],
          ["side by side at most", ({ first }) => first.yarns.map((one) => String(one.mostTogether)).join(", ")],
          ["stripes to expect, about", ({ first }) => Math.round(first.stripesToExpectAbout)],
        ],
        at,
      ),
    ];
  }),
);

/** The stripes as threads, and how many ends there are of each yarn. */
export const stripesPage: View = {
  name: "stripes",
  heading: "Stripes",
  blocks: [
    toldOf(told.noStripes),
    says`${many(loom.ends, "end")}, from end 1:`,
    fromPart(loom.stripes, ({ runs }) => [{ is: "picture", stripes: runs }]),
    optional(table("yarn", { caption: "Ends of each yarn" }, ["yarn", yarnName], ["ends", yarn.ends])),
    optional(outlook),
  ],
};
