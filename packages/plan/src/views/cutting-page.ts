import * as join from "../figures/join.js";
import * as told from "../figures/told.js";
import * as tying from "../figures/tying.js";
import type { OldLease } from "../parts/lease-of-old-warp.js";
import { firstSix, listed } from "../parts/told.js";
import type { Block } from "./block.js";
import { byTheTapeDown, byTheTapeUp } from "./length-formats.js";
import { whereEndOneIs, whereTheKnotsAre, tiedOrAfresh } from "./seat.js";
import { either } from "./shown.js";
import { toldOf } from "./told-lines.js";
import { caution, says, shown, step } from "./view.js";
import type { Template, View } from "./view.js";
import { all, byWord, fromPart, NONE, optional } from "./ways.js";

function leaseSteps({ lifts, together, floating }: OldLease): readonly Block[] {
  const said = (says: string): Block => ({ is: "says", as: "step", says: [says] });
  const shafts = (lift: readonly number[]): string => `${lift.length === 1 ? "shaft" : "shafts"} ${listed(lift)}`;
  return [
    said(
      lifts === null
        ? "Pick up the lease of the old warp by hand, behind the shafts, while it is still tight, and put a stick into each shed."
        : `While the warp is still tight, lift ${shafts(lifts[0])} and put a lease stick into the shed behind the shafts; lift ${shafts(lifts[1])} and put in the other.`,
    ),
    ...(together.length === 0
      ? []
      : [
          said(
            `Pick up by hand what the shafts do not part: old ends ${firstSix(together.map(([end, next]) => `${String(end)} and ${String(next)}`))}.`,
          ),
        ]),
    ...(floating.length === 0
      ? []
      : [said(`Lay the floating old ends over and under by hand: ${firstSix(floating)}.`)]),
  ];
}

const lease = fromPart(tying.lease, leaseSteps);
const sticksTied = step`Tie the two sticks to each other at both ends, and both to the loom, before the warp is slackened: cut ends let them drop.`;
const eased = all(
  caution`Ease the tension a tooth at a time, hands and hair clear of the crank: a warp let go under tension takes its beam, and fingers, with it.`,
  step`Lock or tie the cloth beam and the warp beam, so that neither can roll back when the warp is cut.`,
);
const backRod = step`Tie the back rod up to the back beam now: once the warp is cut its weight draws the old ends back out of the heddles.`;
const blades = caution`Cut away from yourself, group by group, and tie each group before the next is cut. Where a school or workshop has rules for looms and blades, they come first.`;
const spares = optional(
  says`The old warp stands in for ${shown(join.spared, byTheTapeDown)} of waste at the other end; the new warp still brings ${shown(join.waste, byTheTapeUp)}.`,
);

const ways: Readonly<Record<"in front of the reed" | "behind the reed" | "behind the heddles" | "nowhere", Template>> =
  {
    "in front of the reed": all(
      eased,
      backRod,
      blades,
      step`Cut in front of the reed. Leave about ${either("8 in", "20 cm")} of old warp standing out of the reed, tied in groups so that it cannot slip back.`,
    ),
    "behind the reed": all(
      lease,
      sticksTied,
      eased,
      backRod,
      blades,
      step`Cut behind the reed. Leave a hand's length of old warp standing out of the heddles, tied in groups so that it cannot slip back.`,
    ),
    "behind the heddles": all(
      lease,
      sticksTied,
      eased,
      blades,
      step`Cut behind the lease sticks. Leave about ${either("12 in", "30 cm")} of old warp behind the shafts and ${either("6 in", "15 cm")} past the reed, tied in groups so that it cannot slip.`,
    ),
    nowhere: NONE,
  };

/** What comes before the scissors, in order: there is no way back from the cut. */
export const cuttingPage: View = {
  name: "before-cutting",
  heading: "Before cutting",
  blocks: [
    tiedOrAfresh(
      all(toldOf(told.knots, told.left), whereTheKnotsAre, whereEndOneIs, spares, byWord(join.knots, ways)),
      NONE,
    ),
  ],
};
