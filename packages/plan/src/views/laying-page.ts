import * as join from "../figures/join.js";
import { job } from "../figures/keys.js";
import * as loom from "../figures/loom.js";
import * as winding from "../figures/winding.js";
import { perLength } from "./formats.js";
import { byTheTape } from "./length-formats.js";
import type { Block } from "./block.js";
import { whereEndOneIs, tiedOrAfresh } from "./seat.js";
import { many } from "./shown.js";
import { listOf } from "./table.js";
import { says, shown, step } from "./view.js";
import type { Template, View } from "./view.js";
import { all, byWord, fromPart, NONE, under, unsaid, where } from "./ways.js";

const inThisOrder: Block = {
  is: "says",
  as: "step",
  says: ["Lay the chains before you in this order, the first end of each on the side named, and look at the labels."],
};
const laid = fromPart(winding.laying, (chains, at) => [
  inThisOrder,
  ...listOf(
    { caption: "The chains from your left", ticked: true },
    chains,
    [
      ["from your left", ({ place }) => place],
      ["chain", ({ chain }) => chain],
      ["its first end", ({ firstEndOn }) => `at your ${firstEndOn}`],
    ],
    at,
  ),
]);
const spread = fromPart(winding.raddle, (marks, at) =>
  listOf(
    { caption: "Ends in the raddle, from end 1", ticked: true },
    marks.map(({ to, ends }, index) => ({ to, ends, own: ends - (marks[index - 1]?.ends ?? 0) })),
    [
      ["up to", ({ to }) => byTheTape(to, at.units)],
      ["ends", ({ own }) => own],
      ["so far", ({ ends }) => ends],
    ],
    at,
  ),
);
const raddle = under(
  "Raddle",
  says`Spread ${many(loom.ends, "end")} over ${shown(loom.widthInReed, byTheTape)}, ${shown(loom.sett, perLength)} in the mean, with teeth of ${shown(job.winding.raddle, perLength)}.`,
  step`Lay the middle of the warp at the middle of the raddle, and close the raddle before you wind.`,
  spread,
);
const onBackRod = step`Put the ends of the chains without the lease on the back rod, spread by the raddle.`;
/** Packing while beaming, said where the warp is beamed. */
export const packed: Template = step`Lay paper or flat sticks between the layers as you wind, wider than the warp, and pull it tight group by group every turn of the beam.`;

const ways: Readonly<Record<"in front of the reed" | "behind the reed" | "behind the heddles" | "nowhere", Template>> =
  {
    "in front of the reed": all(
      step`Fasten the chains at the breast beam, in that order.`,
      step`Put their lease on two sticks, tied together, between the beam and the reed.`,
    ),
    "behind the reed": all(
      step`Draw the stubs of the old warp forward out of the reed.`,
      step`Fasten the chains at the breast beam, in that order, their lease on two sticks, tied together.`,
      step`Sley them through the reed from the front, as many ends to the dent and from the same dent as before.`,
    ),
    "behind the heddles": all(
      step`Take what is left of the old warp off the back rod.`,
      onBackRod,
      raddle,
      step`Beam the new warp now, in that order, before tying.`,
      packed,
      step`Keep its lease on two sticks, tied together and to the loom, behind the shafts, opposite those of the old warp.`,
    ),
    nowhere: all(
      where(
        job.winding.raddle,
        () => true,
        onBackRod,
        raddle,
        step`Beam the warp now, before it is threaded.`,
        packed,
        step`Keep its lease on two sticks, tied together and to the loom, behind the shafts.`,
      ),
      unsaid(
        job.winding.raddle,
        step`Fasten the chains at the breast beam, their lease on two sticks, tied together and to the loom.`,
      ),
    ),
  };

/** How the chains lie before the weaver, and what is done with them before the first knot. */
export const layingPage: View = {
  name: "laying",
  heading: "Laying the chains",
  blocks: [tiedOrAfresh(all(whereEndOneIs, laid), NONE), byWord(join.knots, ways)],
};
