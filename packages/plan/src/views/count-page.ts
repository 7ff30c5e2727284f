import { job } from "../figures/keys.js";
import * as loom from "../figures/loom.js";
import * as tying from "../figures/tying.js";
import type { GroupOnLoom } from "../parts/groups-on-loom.js";
import { plainly } from "./formats.js";
import { fromTo, shaftText, foundIn } from "./hands.js";
import { sidesTable } from "./sides-table.js";
import { whereEndOneIs, tiedOrAfresh } from "./seat.js";
import { ifAny, many } from "./shown.js";
import { listOf } from "./table.js";
import { says, step } from "./view.js";
import type { View } from "./view.js";
import { all, fromPart, NONE, optional, where } from "./ways.js";

/** A group with the threads that are counted with it, from end 1, those too that are never tied. */
interface Counted extends GroupOnLoom {
  readonly from: number;
  readonly to: number;
}

function countedFromEndOne(rows: readonly GroupOnLoom[]): readonly Counted[] {
  let before = 0;
  return rows.map((row) => {
    const from = before + 1;
    before += row.oldThreads;
    return { ...row, from, to: before };
  });
}

/** A group of new ends alone has nothing to be counted. */
const isThere = ({ oldThreads, special }: GroupOnLoom): boolean => oldThreads > 0 || foundIn(special) !== null;
/** The shafts are those of ends that are tied: ends dropped at the side hang on others. */
const isDropped = ({ special }: GroupOnLoom): boolean => special.some(({ is }) => is === "dropped");

const groups = fromPart(tying.counting, (rows, at) =>
  listOf(
    { caption: "The old warp, group by group", read: "bench", ticked: true },
    countedFromEndOne(rows).filter(isThere),
    [
      ["group", ({ group }) => group],
      ["old ends", ({ oldThreads, from, to }) => (oldThreads === 0 ? "none" : fromTo(from, to))],
      ["how many", ({ oldThreads }) => oldThreads],
      ["first shaft", (row) => (isDropped(row) && row.from !== row.firstOldEnd ? null : shaftText(row.firstShaft))],
      ["last shaft", (row) => (isDropped(row) && row.to !== row.lastOldEnd ? null : shaftText(row.lastShaft))],
      ["found", ({ group }) => [{ blank: `found in group ${String(group)}` }]],
    ],
    at,
    { isEdge: ({ endsStripe }) => endsStripe, note: ({ special }) => foundIn(special) },
  ),
);

/** The old warp counted as it stands, before anything is cut. */
export const countPage: View = {
  name: "old-warp",
  heading: "Count of the old warp",
  blocks: [
    tiedOrAfresh(
      all(
        says`${many(job.oldWarp.ends, "thread")}: room for ${many(loom.places, "new end")}.`,
        optional(
          says`Broken ends: ${ifAny(loom.broken, plainly)}.`,
          says`Threads one too many: ${ifAny(loom.tooMany, plainly)}.`,
        ),
        whereEndOneIs,
        step`Count the old warp as it stands, group by group, from end 1, before anything is cut.`,
        step`Write down what is broken, doubled, left out, or on another shaft; where a number is another than here the loom is right: put it into the job under oldWarp.faults and plan again.`,
        where(loom.tableFor, (word) => word === "tied", groups),
        sidesTable,
      ),
      NONE,
    ),
  ],
};
