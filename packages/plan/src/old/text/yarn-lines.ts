import { compare } from "@thrum/maths";
import type { WarpPlan } from "../plan/warp-plan.js";
import { massText, measuredText, yarnText } from "./amounts.js";
import { plainText } from "./clean.js";
import { extraInYarn } from "./extra-lines.js";
import { table, wrapped } from "./layout.js";

/** How wide and how long, a sentence for each size. */
export function sizeSentences(plan: WarpPlan): readonly string[] {
  const { ends, sett, widthInReed, finishedWidth, pieces, warpLength, warpLengthByAdding } = plan;
  const many = pieces === 1 ? "1 piece" : `${String(pieces)} pieces`;
  return [
    `${String(ends)} ends at ${String(sett)}.`,
    `Width in the reed: ${measuredText(widthInReed, "nearest")}.`,
    `Finished width: ${measuredText(finishedWidth, "nearest")}.`,
    `Warp for ${many}: ${measuredText(warpLength, "roundUp")}.`,
    `Wind ${yarnText(warpLength, "roundUp")} to each end.`,
    ...(compare(warpLengthByAdding, warpLength) < 0
      ? [
          `Added up instead of divided out, the percentages give ${measuredText(warpLengthByAdding, "roundUp")}: too short.`,
        ]
      : []),
  ];
}

/** The same in lines. */
export function sizeLines(plan: WarpPlan): readonly string[] {
  return sizeSentences(plan).flatMap((line) => wrapped(line));
}

/** How the amounts of yarn are rounded. */
export const YARN_ROUNDING =
  "What is needed is rounded up, what is left over is rounded down; the workings have the whole figures.";

export const TAKEN_HEADS: readonly string[] = ["yarn", "ends", "warp", "weft", "together", "weight"];

/** What the cloth takes of each yarn. */
export function yarnTaken({ yarns }: WarpPlan): readonly (readonly (string | number)[])[] {
  return yarns.map(({ name, ends, warp, weft, length, mass, packageMass }) => [
    plainText(name),
    ends,
    yarnText(warp, "roundUp"),
    yarnText(weft, "roundUp"),
    yarnText(length, "roundUp"),
    massText(mass, packageMass, "roundUp"),
  ]);
}

export const BOUGHT_HEADS: readonly string[] = ["yarn", "on hand", "short", "to buy", "left over"];

/** What there is of each yarn, and what is to be bought. */
export function yarnBought({ yarns }: WarpPlan): readonly (readonly string[])[] {
  return yarns.map(({ name, onHand, missing, packageMass, packages, spare }) => [
    plainText(name),
    massText(onHand, packageMass, "roundDown"),
    massText(missing, packageMass, "roundUp"),
    `${String(packages)} of ${packageMass.toString()}`,
    massText(spare, packageMass, "roundDown"),
  ]);
}

/** The longest warp that the yarn on hand allows. */
export function yarnAllows({ yarns }: WarpPlan): readonly string[] {
  return yarns.flatMap(({ name, longestWarp }) =>
    longestWarp === null
      ? []
      : [`The ${plainText(name)} on hand allows a warp of ${yarnText(longestWarp, "roundDown")} with these stripes.`],
  );
}

/** The same in lines. */
export function yarnLines(plan: WarpPlan): readonly string[] {
  return [
    ...wrapped(YARN_ROUNDING),
    ...table(TAKEN_HEADS, yarnTaken(plan)),
    ...extraInYarn(plan).flatMap((line) => wrapped(line)),
    "",
    ...table(BOUGHT_HEADS, yarnBought(plan)),
    ...yarnAllows(plan).flatMap((line) => wrapped(line)),
  ];
}
