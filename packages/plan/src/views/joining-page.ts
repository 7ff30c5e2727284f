import * as join from "../figures/join.js";
import { job } from "../figures/keys.js";
import * as loom from "../figures/loom.js";
import * as tying from "../figures/tying.js";
import type { Block } from "./block.js";
import { numberDown } from "./formats.js";
import { fromTo } from "./hands.js";
import { knots } from "./knot-table.js";
import { whereEndOneIs, tiedOrAfresh } from "./seat.js";
import { many } from "./shown.js";
import { threadedAfresh } from "./threading-list.js";
import { listOf } from "./table.js";
import { says, shown, step } from "./view.js";
import type { Template, View } from "./view.js";
import { all, blanks, byWord, fromPart, NONE, optional } from "./ways.js";

/** What must agree at the last knot of a group, where the weaver can see it from her seat. */
const agrees: Template = byWord(join.knots, {
  "in front of the reed": step`Look at the old end of the group tied last: it must be on the shaft named here and stand in this dent, counted from the one that holds end 1.`,
  "behind the reed": step`Look at the old end of the group tied last: it must be on the shaft named here, and its new end stand in this dent, counted from the one that holds end 1.`,
  "behind the heddles": step`Look at the old end of the group tied last: it must be on the shaft named here; its dent is seen from the front only.`,
  nowhere: NONE,
});

/** Old ends at a side that take no new one: gone before the first knot. */
const dropped = optional(
  fromPart(tying.special, (special) =>
    special
      .filter(({ is }) => is === "dropped")
      .map(({ oldEnd, cutBack }): Block => {
        const ends = fromTo(oldEnd, (oldEnd ?? 0) + cutBack - 1) ?? "";
        const says = `Cut back old ${ends} first, and draw ${cutBack === 1 ? "it" : "them"} out of heddle and reed: no new end goes there.`;
        return { is: "says", as: "step", says: [says] };
      }),
  ),
);

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
  dropped,
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
  knots,
  blanks("stopped after end", "on which day"),
);

/** The list that is ticked off group by group; what is left over at an edge tells where a miscount lies. */
export const joiningPage: View = {
  name: "joining",
  heading: "Joining list",
  afresh: "Threading list",
  blocks: [tiedOrAfresh(tied, threadedAfresh)],
};
