import * as tying from "../figures/tying.js";
import type { HandCheck, ShaftRow } from "../parts/shaft-check.js";
import type { Block, Inline, Line } from "./block.js";
import { handLine } from "./hands.js";
import { tiedOrAfresh } from "./seat.js";
import { listOf } from "./table.js";
import { says, step } from "./view.js";
import type { At, View } from "./view.js";
import { fromPart } from "./ways.js";

function ofWhich({ colours, blends }: ShaftRow): Line {
  const parts: readonly Line[] = [
    ...colours.map(({ yarn, ends }): Line => [`${String(ends)} `, { yarn }]),
    ...blends.map(({ yarns, ends }): Line => [`${String(ends)} of `, ...handLine({ yarns })]),
  ];
  return parts.flatMap((part, at): readonly Inline[] => (at === 0 ? part : [", ", ...part]));
}

/** Hands of one blend on the same shafts, whatever their order and wherever their stripes. */
interface LikeHands {
  readonly yarns: readonly string[];
  readonly shafts: readonly string[];
  readonly where: ReadonlyMap<number, number>;
}

function likeHands(hands: readonly HandCheck[]): readonly LikeHands[] {
  const like = new Map<string, LikeHands>();
  for (const { yarns, shafts, stripe, hands: number } of hands) {
    const sorted = shafts.map(String).sort((one, other) => one.localeCompare(other, "en", { numeric: true }));
    const key = JSON.stringify([yarns, sorted]);
    const before = like.get(key)?.where ?? new Map<number, number>();
    like.set(key, { yarns, shafts: sorted, where: new Map([...before, [stripe, (before.get(stripe) ?? 0) + number]]) });
  }
  return [...like.values()];
}

function inEachHand({ yarns }: LikeHands): Line {
  const each = [...new Set(yarns)].map((yarn): Line => [
    `${String(yarns.filter((one) => one === yarn).length)} `,
    { yarn },
  ]);
  return each.flatMap((one, at): readonly Inline[] => (at === 0 ? one : [", ", ...one]));
}

function handTable(hands: readonly HandCheck[], at: At): readonly Block[] {
  if (hands.length === 0) return [];
  const look =
    "Look through the blends hand by hand: the threads of one hand hang side by side on these shafts, in any order, and of each yarn there are as many as here.";
  return [
    { is: "says", as: "step", says: [look] },
    ...listOf(
      { caption: "The hands of the blends", ticked: true },
      likeHands(hands),
      [
        ["in each hand", inEachHand],
        ["on shafts", ({ shafts }) => shafts.join(" ")],
        [
          "hands in stripe",
          ({ where }) => [...where].map(([stripe, number]) => `${String(number)} in ${String(stripe)}`).join(", "),
        ],
      ],
      at,
    ),
  ];
}

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
    fromPart(tying.check, ({ hands }, at) => handTable(hands, at)),
    step`Put right before the first pick what does not agree, one place at a time:`,
    says`Two ends crossed, each on the other's shaft: untie the two from the front rod, draw both back out of dent and heddle, draw each through the other's, and tie them on again. If both rise as they should and only lie over each other behind the shafts, leave them.`,
    says`One heddle empty, and an end too few on its shaft: hang a thread as long as the warp through it and its dent, tie it to the front rod with its neighbours, and weight it over the back beam. An end that slipped out behind is drawn in again. If the list has an empty heddle there, leave it.`,
    says`An end on a wrong shaft: tie a repair heddle on the right one, and draw the end through it.`,
    tiedOrAfresh(
      says`All wrong from one end on, as far as the edge of a stripe: a knot was missed or made twice. Look on the joining list where that stripe begins, and draw in again from there to the edge.`,
      says`All wrong from one end on: an end was missed or drawn in twice. Look on the threading list for the last group that agrees, and draw in again from there on.`,
    ),
  ],
};
