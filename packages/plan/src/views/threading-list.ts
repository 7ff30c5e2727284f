import * as loom from "../figures/loom.js";
import * as tying from "../figures/tying.js";
import type { JoiningRow } from "../parts/joining-rows.js";
import type { Block } from "./block.js";
import { fromTo, handLine, shaftText } from "./hands.js";
import { many } from "./shown.js";
import { listOf } from "./table.js";
import { says, step } from "./view.js";
import type { At, Template } from "./view.js";
import { all, fromPart } from "./ways.js";

function threadTable(rows: readonly JoiningRow[], at: At): readonly Block[] {
  return listOf(
    { caption: "The ends, group by group", read: "bench", ticked: true },
    rows,
    [
      ["group", ({ group }) => group],
      ["ends", ({ firstEnd, lastEnd }) => fromTo(firstEnd, lastEnd)],
      ["colour", handLine],
      ["how many", ({ ends }) => ends],
      ["first shaft", ({ firstShaft }) => shaftText(firstShaft)],
      ["last shaft", ({ lastShaft }) => shaftText(lastShaft)],
      ["first dent", ({ firstDent }) => firstDent],
      ["last dent", ({ lastDent }) => lastDent],
    ],
    at,
    { isEdge: ({ edge }) => edge !== null },
  );
}

/** Where the warp is threaded afresh, the places stand in the joining list's stead. */
export const threadedAfresh: Template = all(
  says`${many(loom.ends, "end")}, threaded and sleyed from end 1.`,
  step`Thread each group, sley it, look at its last shaft and dent, tick it.`,
  fromPart(tying.joining, threadTable),
);
