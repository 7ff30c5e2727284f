import { job } from "../figures/keys.js";
import * as tying from "../figures/tying.js";
import type { JoiningRow } from "../parts/joining-rows.js";
import type { OldColour } from "../parts/old-colours.js";
import type { Block, Inline } from "./block.js";
import { fromTo, handLine, shaftText, specialsText } from "./hands.js";
import { listOf } from "./table.js";
import type { Column } from "./table.js";
import type { At, Template } from "./view.js";
import { fromPart, alsoReading } from "./ways.js";

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

/** What is looked at is the end tied last. */
const isTiedForwards = ({ to, lastEnd }: JoiningRow): boolean => to === lastEnd;

function knotTable(rows: readonly JoiningRow[], at: At): readonly Block[] {
  const isPlain = rows.every(
    ({ firstEnd, lastEnd, firstOldEnd, lastOldEnd }) => firstEnd === firstOldEnd && lastEnd === lastOldEnd,
  );
  const isInOrder = rows.every(({ passOver }) => passOver === 0);
  const partner = at.see(job.join.partner);
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
      ["shaft", (row) => shaftText(isTiedForwards(row) ? row.lastShaft : row.firstShaft)],
      ["dent", (row) => (isTiedForwards(row) ? row.lastDent : row.firstDent)],
      ["old left", ({ group }) => [{ blank: `old ends left over in group ${String(group)}` }]],
      ["new left", ({ group }) => [{ blank: `new ends left over in group ${String(group)}` }]],
      lookFrom(rows),
    ],
    at,
    {
      isEdge: ({ edge }) => edge !== null,
      note: ({ special }) => specialsText(special, partner.is === "there" ? partner.value : null),
    },
  );
}

/** The knots in the order in which they are tied. */
export const knots: Template = alsoReading(
  job.join.partner,
  alsoReading(tying.colours, fromPart(tying.joining, knotTable)),
);
