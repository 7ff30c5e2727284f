import { endsPerInch, inches, picksPerInch, pounds, yardsPerPound } from "@thrum/maths";
import type { Unit } from "@thrum/maths";

/** A figure of a project: what it is called, and the unit it is reckoned in; a count, a percentage or money has none. */
interface FigureKind {
  readonly says: string;
  readonly base: Unit<string> | "count" | "percent" | "money";
}

/** The figures a project may print. */
export type FigureName =
  | "finishedWidth"
  | "widthLoss"
  | "widthInReed"
  | "sett"
  | "repeats"
  | "endsPerRepeat"
  | "balancingEnds"
  | "edgeEnds"
  | "ends"
  | "pieces"
  | "finishedLength"
  | "hemEachEnd"
  | "lengthLoss"
  | "wovenLength"
  | "takeUpLength"
  | "loomWaste"
  | "warpLength"
  | "warpYarn"
  | "warpYarnAgain"
  | "picksPerLength"
  | "wovenInAll"
  | "picks"
  | "weftYarn"
  | "yarnInAll"
  | "lengthPerMass"
  | "warpMass"
  | "costPerPound"
  | "warpCost";

/** What each figure is, and the unit it is reckoned in. */
export const figureKinds: Readonly<Record<FigureName, FigureKind>> = {
  finishedWidth: { says: "finished width", base: inches },
  widthLoss: { says: "width lost, reed to finished", base: "percent" },
  widthInReed: { says: "width in the reed", base: inches },
  sett: { says: "sett", base: endsPerInch },
  repeats: { says: "repeats across", base: "count" },
  endsPerRepeat: { says: "ends to a repeat", base: "count" },
  balancingEnds: { says: "ends beside the repeats", base: "count" },
  edgeEnds: { says: "extra ends at the edges", base: "count" },
  ends: { says: "warp ends, all of them", base: "count" },
  pieces: { says: "pieces", base: "count" },
  finishedLength: { says: "finished length of a piece", base: inches },
  hemEachEnd: { says: "hem at each end", base: inches },
  lengthLoss: { says: "length lost, loom to finished", base: "percent" },
  wovenLength: { says: "woven length of a piece", base: inches },
  takeUpLength: { says: "warp for take-up", base: inches },
  loomWaste: { says: "loom waste", base: inches },
  warpLength: { says: "warp length", base: inches },
  warpYarn: { says: "warp yarn", base: inches },
  warpYarnAgain: { says: "warp yarn in the other unit", base: inches },
  picksPerLength: { says: "picks per length", base: picksPerInch },
  wovenInAll: { says: "cloth woven in all", base: inches },
  picks: { says: "picks in all", base: "count" },
  weftYarn: { says: "weft yarn", base: inches },
  yarnInAll: { says: "warp and weft yarn together", base: inches },
  lengthPerMass: { says: "length of yarn to the pound", base: yardsPerPound },
  warpMass: { says: "warp mass", base: pounds },
  costPerPound: { says: "cost of a pound of yarn", base: "money" },
  warpCost: { says: "cost of the warp yarn", base: "money" },
};
