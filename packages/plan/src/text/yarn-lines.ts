import type { WarpPlan } from "../plan/warp-plan.js";
import { massText, measuredText, yarnText } from "./amounts.js";
import { plainText } from "./clean.js";
import { table, wrapped } from "./layout.js";

/** How wide and how long. */
export function sizeLines(plan: WarpPlan): readonly string[] {
  const { ends, sett, widthInReed, finishedWidth, pieces, warpLength, warpLengthByAdding } = plan;
  const many = pieces === 1 ? "1 piece" : `${String(pieces)} pieces`;
  return [
    `${String(ends)} ends at ${String(sett)}.`,
    `Width in the reed: ${measuredText(widthInReed, "nearest")}.`,
    `Finished width: ${measuredText(finishedWidth, "nearest")}.`,
    `Warp for ${many}: ${measuredText(warpLength, "roundUp")}.`,
    `Wind ${yarnText(warpLength, "roundUp")} to each end.`,
    `Added up instead of divided out, the percentages give ${measuredText(warpLengthByAdding, "roundUp")}: too short.`,
  ].flatMap((line) => wrapped(line));
}

/** What the warp takes of each yarn, and what is to be bought. */
export function yarnLines({ yarns }: WarpPlan): readonly string[] {
  const taken = yarns.map(({ name, ends, warp, weft, length, mass, packageMass }) => [
    plainText(name),
    ends,
    yarnText(warp, "roundUp"),
    yarnText(weft, "roundUp"),
    yarnText(length, "roundUp"),
    massText(mass, packageMass, "roundUp"),
  ]);
  const bought = yarns.map(({ name, onHand, missing, packageMass, packages, spare }) => [
    plainText(name),
    massText(onHand, packageMass, "roundDown"),
    massText(missing, packageMass, "roundUp"),
    `${String(packages)} of ${packageMass.toString()}`,
    massText(spare, packageMass, "roundDown"),
  ]);
  return [
    ...wrapped("What is needed is rounded up, what is left over is rounded down; the workings have the whole figures."),
    ...table(["yarn", "ends", "warp", "weft", "together", "weight"], taken),
    "",
    ...table(["yarn", "on hand", "short", "to buy", "left over"], bought),
    ...yarns.flatMap(({ name, longestWarp }) =>
      longestWarp === null
        ? []
        : wrapped(
            `The ${plainText(name)} on hand allows a warp of ${yarnText(longestWarp, "roundDown")} with these stripes.`,
          ),
    ),
  ];
}
