import { group } from "../core/keys.js";
import { job } from "../figures/keys.js";
import * as loom from "../figures/loom.js";
import type { SideTaken } from "../parts/room-at-sides.js";
import type { WayToAdd } from "../parts/ways-to-add.js";
import { listOf } from "./table.js";
import type { Template } from "./view.js";
import { fromPart, optional, unsaid } from "./ways.js";

function ends(number: number): string {
  if (number === 0) return "none";
  return number > 0 ? `${String(number)} more` : `${String(-number)} fewer`;
}

/** What is short at a side, shaft by shaft. */
function shortAt({ side, heddles, dentsLeft, isShort }: SideTaken): readonly string[] {
  if (!isShort) return [];
  const short = heddles.flatMap(({ shaft, left }) =>
    left !== null && left < 0 ? [`heddles on shaft ${String(shaft)}: ${String(-left)}`] : [],
  );
  const dents = dentsLeft !== null && dentsLeft < 0 ? [`dents: ${String(-dentsLeft)}`] : [];
  return [`${side}, ${[...short, ...dents].join(", ")}`];
}

function fitsText({ fits, taken }: WayToAdd): string {
  return fits ? "it fits" : taken.flatMap(shortAt).join("; ");
}

/** The three ways to add or drop ends, side by side, until one of them is chosen. */
export const sidesTable: Template = optional(
  unsaid(
    group(job.join.sides),
    fromPart(loom.ways, (ways, at) =>
      listOf(
        { caption: "Ends to add or drop: choose a way under join.sides" },
        ways.filter(({ sides: { before, after } }) => before !== 0 || after !== 0),
        [
          ["sides", ({ where }) => where],
          ["before end 1", ({ sides }) => ends(sides.before)],
          ["after the last", ({ sides }) => ends(sides.after)],
          ["short", fitsText],
        ],
        at,
      ),
    ),
  ),
);
