import { millimetres, sign } from "@thrum/maths";
import * as breaks from "../figures/breaks.js";
import { job } from "../figures/keys.js";
import * as piece from "../figures/piece.js";
import * as rows from "../figures/rows.js";
import { marks } from "../figures/tape.js";
import * as warpLeft from "../figures/warp-left.js";
import { entries as possible } from "../figures/possible.js";
import type { Block } from "./block.js";
import { byTheTape, perLength } from "./formats.js";
import { ifAny, many, pieceTitle } from "./shown.js";
import { listOf, table } from "./table.js";
import { says, shown, step } from "./view.js";
import type { Template, View } from "./view.js";
import { each, fromPart, optional, where } from "./ways.js";

/** The tape of each entry that is cloth, drawn full size. */
const tapes: Template = each(
  "piece",
  fromPart(piece.woven, (woven, { see, row, units }): readonly Block[] => {
    const hem = see(piece.hem, row);
    const entries = see(rows.entries);
    const entry = entries.is === "there" ? entries.value.find(({ name }) => name === row?.name) : undefined;
    if (entry?.kind !== "cloth") return [];
    return [
      {
        is: "tape",
        piece: entry.title,
        millimetres: woven.in(millimetres),
        hem: hem.is === "there" ? hem.value.in(millimetres) : 0,
        divided: units,
      },
    ];
  }),
);

/** Where each piece stops. */
export const tapePage: View = {
  name: "pieces",
  heading: "Piece tape",
  blocks: [
    optional(says`Weave at ${shown(job.cloth.picks, perLength)}, counted at weaving tension.`),
    table(
      "piece",
      { caption: "On the loom, at weaving tension" },
      ["entry", pieceTitle],
      ["how many", piece.number],
      ["each", shown(piece.woven, byTheTape)],
      ["of it a hem at each end", ifAny(piece.hem, byTheTape)],
      ["left unwoven at each end", ifAny(piece.fringe, byTheTape)],
      ["picks", piece.picksInAll],
    ),
    step`Measure on the cloth from the first pick, pin the tape along with it, and never measure on the warp.`,
    optional(
      where(
        breaks.one,
        (one) => sign(one) !== 0,
        step`Weave ${shown(breaks.one, byTheTape)} between two pieces, to be cut away.`,
      ),
      says`What is left of the warp, ${shown(job.found.warpLeft, byTheTape)}, is enough for ${many(possible, "entry more of the run", "entries of the run")}.`,
      says`Of what is left ${shown(warpLeft.forCloth, byTheTape)} can be woven.`,
    ),
    optional(
      fromPart(marks, ({ marks: all, unmarked }, at): readonly Block[] => [
        ...listOf(
          { caption: "Where each stops on the tape, from the first pick", ticked: true },
          all,
          [
            ["piece", ({ title, ofEntry }) => `${title} ${String(ofEntry)}`],
            ["begins at", ({ from }) => byTheTape(from, at.units)],
            ["stops at", ({ to }) => byTheTape(to, at.units)],
            ["woven to", ({ inRun }) => [{ blank: `woven to, piece ${String(inRun)}` }]],
          ],
          at,
        ),
        ...(unmarked === 0 ? [] : [{ is: "says", as: "note", says: [`And ${String(unmarked)} more.`] } as const]),
      ]),
    ),
    tapes,
  ],
};
