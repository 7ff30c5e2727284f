import type { EndsPerLength, IndirectCount, Length, Mass, Money, PicksPerLength } from "@thrum/maths";

/** The figures a project may print, each with what it is worth; percentages are of what was there before. */
export interface ProjectFigures {
  readonly finishedWidth: Length;
  readonly widthLoss: number;
  readonly widthInReed: Length;
  readonly sett: EndsPerLength;
  readonly repeats: number;
  readonly endsPerRepeat: number;
  readonly balancingEnds: number;
  readonly edgeEnds: number;
  readonly ends: number;
  readonly endsPerDent: number;
  readonly pieces: number;
  readonly finishedLength: Length;
  readonly hemEachEnd: Length;
  readonly lengthLoss: number;
  readonly wovenLength: Length;
  readonly takeUpLength: Length;
  readonly loomWaste: Length;
  readonly warpLength: Length;
  readonly warpYarn: Length;
  readonly warpYarnAgain: Length;
  readonly picksPerLength: PicksPerLength;
  readonly wovenInAll: Length;
  readonly picks: number;
  readonly weftAllowance: number;
  readonly weftYarn: Length;
  readonly yarnInAll: Length;
  readonly lengthPerMass: IndirectCount;
  readonly warpMass: Mass;
  readonly costPerPound: Money;
  readonly warpCost: Money;
}

export type FigureName = keyof ProjectFigures;

/** What a figure is called, and what it is counted in: the dimension of its unit, or nothing but a number. */
interface FigureKind {
  readonly says: string;
  readonly counted: string;
}

/** Yarn is bought, not cut: a page gives it in round numbers. */
export const givenRoundly: ReadonlySet<FigureName> = new Set([
  "warpYarn",
  "warpYarnAgain",
  "weftYarn",
  "yarnInAll",
  "warpMass",
]);

/** What each figure is. */
export const figureKinds: Readonly<Record<FigureName, FigureKind>> = {
  finishedWidth: { says: "finished width", counted: "length" },
  widthLoss: { says: "width lost, reed to finished", counted: "percent" },
  widthInReed: { says: "width in the reed", counted: "length" },
  sett: { says: "sett", counted: "ends per length" },
  repeats: { says: "repeats across", counted: "count" },
  endsPerRepeat: { says: "ends to a repeat", counted: "count" },
  balancingEnds: { says: "ends beside the repeats", counted: "count" },
  edgeEnds: { says: "extra ends at the edges", counted: "count" },
  ends: { says: "warp ends, all of them", counted: "count" },
  endsPerDent: { says: "ends to a dent", counted: "count" },
  pieces: { says: "pieces", counted: "count" },
  finishedLength: { says: "finished length of a piece", counted: "length" },
  hemEachEnd: { says: "hem at each end", counted: "length" },
  lengthLoss: { says: "length lost, loom to finished", counted: "percent" },
  wovenLength: { says: "woven length of a piece", counted: "length" },
  takeUpLength: { says: "warp for take-up", counted: "length" },
  loomWaste: { says: "loom waste", counted: "length" },
  warpLength: { says: "warp length", counted: "length" },
  warpYarn: { says: "warp yarn", counted: "length" },
  warpYarnAgain: { says: "warp yarn, in a second unit", counted: "length" },
  picksPerLength: { says: "picks per length", counted: "picks per length" },
  wovenInAll: { says: "cloth woven in all", counted: "length" },
  picks: { says: "picks in all", counted: "count" },
  weftAllowance: { says: "weft allowed over the width, for take-up and joins", counted: "percent" },
  weftYarn: { says: "weft yarn", counted: "length" },
  yarnInAll: { says: "warp and weft yarn together", counted: "length" },
  lengthPerMass: { says: "length of yarn to the weight", counted: "length per mass" },
  warpMass: { says: "warp mass", counted: "mass" },
  costPerPound: { says: "cost of a pound of yarn", counted: "money" },
  warpCost: { says: "cost of the warp yarn", counted: "money" },
};
