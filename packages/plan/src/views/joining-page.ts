import * as join from "../figures/join.js";
import { job } from "../figures/keys.js";
import * as loom from "../figures/loom.js";
import * as tying from "../figures/tying.js";
import type { JoiningRow } from "../parts/joining-rows.js";
import type { OldColour } from "../parts/old-colours.js";
import type { Block, Inline } from "./block.js";
import { numberDown } from "./formats.js";
import { fromTo, handLine, shaftText, specialsText } from "./hands.js";
import { whereEndOneIs, tiedOrAfresh } from "./seat.js";
import { many } from "./shown.js";
import { threadedAfresh } from "./threading-list.js";
import { listOf } from "./table.js";
import type { Column } from "./table.js";
import { says, shown, step } from "./view.js";
import type { At, Template, View } from "./view.js";
import { all, blanks, byWord, fromPart, NONE, optional, reading } from "./ways.js";

/** The first end of the stripe whose edge this is: what is miscounted lies from there on, if the edge before agreed. */
function lookFrom(rows: readonly JoiningRow[]): Column<JoiningRow> {
  const first = new Map<number, number>();
  for (const { stripe, from } of rows) if (!first.has(stripe)) first.set(stripe, from);
  return ["look from", ({ edge, stripe }) => (edge === null ? "" : String(first.get(stripe) ?? ""))];
}

/** "12 green, 6 white": what the eye meets on the old warp. */
function oldOnes(colours: readonly OldColour[]): readonly Inline[] {
  return colours.flatMap((one, at): readonly Inline[] => [
    `${at === 0 ? "" : ", "}${String(one.ends)} `,
    ...handLine(one),
  ]);
}

function knotTable(rows: readonly JoiningRow[], at: At): readonly Block[] {
  const isPlain = rows.every(
    ({ firstEnd, lastEnd, firstOldEnd, lastOldEnd }) => firstEnd === firstOldEnd && lastEnd === lastOldEnd,
  );
  const isInOrder = rows.every(({ passOver }) => passOver === 0);
  const old = at.see(tying.colours);
  const oldColours = old.is === "there" ? old.value : [];
  return listOf(
    { caption: "The knots, group by group", read: "bench", ticked: true },
    rows,
    [
      ["group", ({ group }) => group],
      ["pass", ({ passOver }) => (isInOrder ? null : passOver)],
      ["new ends", ({ from, to }) => fromTo(from, to)],
      ["old ends", ({ firstOldEnd, lastOldEnd }) => (isPlain ? null : (fromTo(firstOldEnd, lastOldEnd) ?? "none"))],
      ["colour", handLine],
      [
        "on old",
        ({ group }) => {
          const met = oldColours[group - 1] ?? [];
          return met.length === 0 ? null : oldOnes(met);
        },
      ],
      ["knots", ({ knots }) => knots],
      ["shaft", ({ lastShaft }) => shaftText(lastShaft)],
      ["dent", ({ lastDent }) => lastDent],
      ["old left", ({ group }) => [{ blank: `old ends left over in group ${String(group)}` }]],
      ["new left", ({ group }) => [{ blank: `new ends left over in group ${String(group)}` }]],
      lookFrom(rows),
    ],
    at,
    { isEdge: ({ edge }) => edge !== null, note: ({ special }) => specialsText(special) },
  );
}

/** What must agree at the last knot of a group, where the weaver can see it from her seat. */
const agrees: Template = byWord(join.knots, {
  "in front of the reed": step`Look at the last old end of the group: it must be on the shaft named here and stand in this dent, counted from the one that holds end 1.`,
  "behind the reed": step`Look at the last old end of the group: it must be on the shaft named here, and its last new end stand in this dent, counted from the one that holds end 1.`,
  "behind the heddles": step`Look at the last old end of the group: it must be on the shaft named here; its dent is seen from the front only.`,
  nowhere: NONE,
});

const fromEndOne = step`Begin at end 1 and tie each new end to the next old one.`;
const order: Template = byWord(
  job.join.order,
  {
    "from end 1": fromEndOne,
    "from the last end": step`Begin at the last end and tie each new end to the next old one, towards end 1.`,
    "one colour at a time": step`Tie one colour at a time: pass over so many old ends, those already tied among them, then tie the group.`,
  },
  fromEndOne,
);

const knot = optional(
  byWord(job.join.knot, {
    "overhand of both ends": step`Tie both ends together in one overhand knot, close to the cut end.`,
    "overhand of one end": step`Tie the new end in an overhand knot round the old one.`,
    square: step`Tie a square knot.`,
    "weaver's": step`Tie a weaver's knot.`,
  }),
);

const LEFT: readonly (readonly [string, string, string])[] = [
  [
    "1 new, no old",
    "an old end was passed over, or two old ends lie in one knot; else the chain holds one too many",
    "a bare old end",
  ],
  [
    "1 old, no new",
    "a new end was passed over, or two new ends lie in one knot; else the chain is short",
    "a loose new end",
  ],
];

const tied: Template = all(
  says`${many(tying.knots, "knot")} for ${many(loom.ends, "end")}.`,
  optional(says`At ${job.join.perHour} knots an hour that is ${shown(tying.hours, numberDown)} hours.`),
  whereEndOneIs,
  order,
  knot,
  step`Count each group off on both warps, tie it, tug each knot, tick the group.`,
  agrees,
  step`Stop where a stripe ends, at the heavy line or the mark =: nothing may be left over there, neither old nor new. If something is, look from the end named beside it to this one before you go on.`,
  fromPart(tying.joining, (_, at) =>
    listOf(
      { caption: "What is left over at the edge of a stripe" },
      LEFT,
      [
        ["left over", ([seen]) => seen],
        ["it means", ([, means]) => means],
        ["look for", ([, , look]) => look],
      ],
      at,
    ),
  ),
  reading(tying.colours, fromPart(tying.joining, knotTable)),
  blanks("stopped after end", "on which day"),
);

/** The list that is ticked off group by group; what is left over at an edge tells where a miscount lies. */
export const joiningPage: View = {
  name: "joining",
  heading: "Joining list",
  blocks: [tiedOrAfresh(tied, threadedAfresh)],
};
