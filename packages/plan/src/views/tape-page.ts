import { millimetres, sign } from "@thrum/maths";
import * as breaks from "../figures/breaks.js";
import { job } from "../figures/keys.js";
import * as piece from "../figures/piece.js";
import * as remaining from "../figures/remaining.js";
import * as rows from "../figures/rows.js";
import { marks } from "../figures/tape.js";
import * as warpLeft from "../figures/warp-left.js";
import { entries as possible } from "../figures/possible.js";
import type { LaidShots } from "../parts/laid-shots.js";
import type { Block } from "./block.js";
import { handLine } from "./hands.js";
import { perLength } from "./formats.js";
import { byTheTape } from "./length-formats.js";
import { ifAny, many, pieceTitle } from "./shown.js";
import { listOf, table } from "./table.js";
import { says, shown, step } from "./view.js";
import type { At, Template, View } from "./view.js";
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

function shotsOf(title: string, laid: readonly LaidShots[], at: At): readonly Block[] {
  const upTo = laid.map((_, index) => laid.slice(0, index + 1).reduce((so, { picks }) => so + picks, 0));
  const weave: Block = {
    is: "says",
    as: "step",
    says: ["Weave these picks one after the other, and tick each stripe."],
  };
  return [
    weave,
    ...listOf(
      { caption: `The weft of one ${title}, from its first pick`, read: "bench", ticked: true },
      laid.map((stripe, index) => ({ ...stripe, upTo: upTo[index] ?? 0 })),
      [
        ["weft", handLine],
        ["picks", ({ picks }) => picks],
        ["so far", ({ upTo: all }) => all],
        ["takes", ({ apart }) => (apart === null ? null : byTheTape(apart, at.units))],
      ],
      at,
    ),
  ];
}

/** Of what is woven in stripes: how many picks of each before the next. */
const weftStripes: Template = optional(
  each(
    "piece",
    where(
      piece.weftIs,
      (is) => is === "striped",
      fromPart(piece.weftLaid, (laid, at): readonly Block[] => {
        const entries = at.see(rows.entries);
        const title = entries.is === "there" ? entries.value.find(({ name }) => name === at.row?.name)?.title : null;
        return shotsOf(title ?? "piece", laid, at);
      }),
    ),
  ),
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
    optional(
      each(
        "piece",
        says`${pieceTitle}: its fringe, twisted, is ${shown(piece.twistedAtEachEnd, byTheTape)} at each end, and the whole of it ${shown(piece.withFringe, byTheTape)} from tip to tip.`,
      ),
    ),
    weftStripes,
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
      where(
        job.found.warpLeft,
        () => true,
        table(
          "piece",
          { caption: "Still to weave, with the warp that is left" },
          ["entry", pieceTitle],
          ["how many", remaining.number],
          ["each", shown(piece.woven, byTheTape)],
        ),
      ),
    ),
    optional(
      fromPart(marks, ({ marks: all, unmarked }, at): readonly Block[] => [
        ...listOf(
          { caption: "Where each stops on the tape, from the first pick", ticked: true },
          all,
          [
            ["piece", ({ title }) => title],
            ["number", ({ ofEntry }) => ofEntry],
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
