import * as tying from "../figures/tying.js";
import type { HandCheck, ShaftRow } from "../parts/shaft-check.js";
import { counted, listed } from "../parts/told.js";
import type { Block, Inline, Line } from "./block.js";
import { handLine } from "./hands.js";
import { listOf } from "./table.js";
import { says, step } from "./view.js";
import type { View } from "./view.js";
import { fromPart } from "./ways.js";

function ofWhich({ colours, blends }: ShaftRow): Line {
  const parts: readonly Line[] = [
    ...colours.map(({ yarn, ends }): Line => [`${String(ends)} `, { yarn }]),
    ...blends.map(({ yarns, ends }): Line => [`${String(ends)} of `, ...handLine({ yarns })]),
  ];
  return parts.flatMap((part, at): readonly Inline[] => (at === 0 ? part : [", ", ...part]));
}

/** "of every two ends on shafts 1 and 2 one is plum" */
function handSays({ yarns, shafts, hands, stripe }: HandCheck): Block {
  const each = [...new Set(yarns)].map((yarn): Line => [
    `${String(yarns.filter((one) => one === yarn).length)} `,
    { yarn },
  ]);
  const names = each.flatMap((one, at): readonly Inline[] => (at === 0 ? one : [", ", ...one]));
  const where = [...new Set(shafts.map(String))];
  return {
    is: "says",
    as: "fact",
    says: [
      `Stripe ${String(stripe)}, ${counted(hands, "hand")}: of every ${String(yarns.length)} ends on ${where.length === 1 ? "shaft" : "shafts"} ${listed(where)} `,
      ...names,
      yarns.length === 2 ? ", in either order." : ", in any order.",
    ],
  };
}

const MOST_HANDS = 12;

/** What must show with each shaft up, before the first pick, and how what is wrong is put right. */
export const shedsPage: View = {
  name: "shaft-check",
  heading: "Shaft check",
  blocks: [
    step`Lift one shaft after the other and look across the warp: count what rises, colour by colour.`,
    fromPart(tying.check, ({ rows }, at) =>
      listOf(
        { caption: "With one shaft up", ticked: true },
        rows,
        [
          ["shaft", ({ shaft }) => (shaft === "not known" ? "not known" : shaft)],
          ["ends", ({ ends }) => ends],
          ["of which", ofWhich],
        ],
        at,
      ),
    ),
    fromPart(tying.check, ({ hands }) => [
      ...hands.slice(0, MOST_HANDS).map(handSays),
      ...(hands.length > MOST_HANDS
        ? [{ is: "says", as: "fact", says: [`And so in ${String(hands.length - MOST_HANDS)} places more.`] } as const]
        : []),
    ]),
    step`Put right before the first pick what does not agree, one place at a time:`,
    says`Two ends crossed, each on the other's shaft: untie the two from the front rod, draw both back out of dent and heddle, draw each through the other's, and tie them on again. If both rise as they should and only lie over each other behind the shafts, leave them.`,
    says`One heddle empty, and an end too few on its shaft: hang a thread as long as the warp through it and its dent, tie it to the front rod with its neighbours, and weight it over the back beam. An end that slipped out behind is drawn in again. If the list has an empty heddle there, leave it.`,
    says`An end on a wrong shaft: tie a repair heddle on the right one, and draw the end through it.`,
    says`All wrong from one end on, as far as the edge of a stripe: a knot was missed or made twice. Look on the joining list where that stripe begins, and draw in again from there to the edge.`,
  ],
};
