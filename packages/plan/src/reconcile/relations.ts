import {
  percentAdded,
  percentLost,
  picksInLength,
  pounds,
  reedWidth,
  solveFor,
  sum,
  times,
  warpLengthByAdding,
  weftLength,
  widthInReedFromFinished,
  widthInReedByAdding,
  wovenLength,
  yarnCost,
  yarnForEnds,
  yarnMass,
} from "@thrum/maths";
import type { FigureName, ProjectFigures } from "./figures.js";
import type { Amount } from "./stated-figure.js";

export type SumConvention =
  | "adding rule"
  | "hem once"
  | "pairs counted as ends"
  | "edge ends left out"
  | "waste with every piece"
  | "weft taken equal to warp";

export type Rounding = "nearest" | "roundDown" | "roundUp";

/** How a page is taken to reckon. */
export interface WayOfReckoning {
  readonly convention: SumConvention | null;
  readonly rounding: Rounding;
}

/** One sum of a project: a figure from others. What it may contain unsaid makes it, where not stated, a least value. */
export interface Relation {
  readonly answer: FigureName;
  readonly from: readonly FigureName[];
  readonly mayContain: readonly FigureName[];
  readonly value: (given: ReadonlyMap<FigureName, Amount>) => Amount;
}

function relation<A extends FigureName, F extends FigureName, M extends FigureName = never>(
  answer: A,
  from: readonly F[],
  mayContain: readonly M[],
  value: (given: Pick<ProjectFigures, F> & Partial<Pick<ProjectFigures, M>>) => ProjectFigures[A],
): Relation {
  return { answer, from, mayContain, value: (given) => value(Object.fromEntries(given) as never) };
}

/** Ends are whole: how the page rounds decides which. */
function endsInWidth(
  { sett, widthInReed: width }: Pick<ProjectFigures, "sett" | "widthInReed">,
  rounding: Rounding,
): number {
  return solveFor(reedWidth, "ends", "width", { rounding })({ sett, width });
}

/** The sums of a project in their order, each later one free to use what an earlier one gave. */
export function relations({ convention, rounding }: WayOfReckoning): readonly Relation[] {
  const adds = convention === "adding rule";
  const hems = convention === "hem once" ? 0.5 : 1;
  const threads = convention === "pairs counted as ends" ? 2 : 1;
  const edges = convention === "edge ends left out" ? 0 : 1;
  return [
    relation("widthInReed", ["finishedWidth", "widthLoss"], [], ({ finishedWidth, widthLoss }) =>
      adds
        ? widthInReedByAdding({ finishedWidth, allowance: percentAdded(widthLoss) })
        : widthInReedFromFinished({ finishedWidth, reedToFinished: percentLost(widthLoss) }),
    ),
    relation("ends", ["sett", "widthInReed"], ["edgeEnds"], ({ edgeEnds = 0, ...given }) => {
      return endsInWidth(given, rounding) + edges * edgeEnds;
    }),
    relation("ends", ["repeats", "endsPerRepeat"], ["balancingEnds", "edgeEnds"], (given) => {
      const { repeats, endsPerRepeat, balancingEnds = 0, edgeEnds = 0 } = given;
      return repeats * endsPerRepeat + balancingEnds + edges * edgeEnds;
    }),
    relation("wovenLength", ["finishedLength", "lengthLoss"], ["hemEachEnd"], (given) => {
      const { finishedLength, lengthLoss, hemEachEnd = times(finishedLength, 0) } = given;
      const cut = { finishedLength, hemEachEnd: times(hemEachEnd, hems) };
      if (!adds) return wovenLength({ ...cut, loomToFinished: percentLost(lengthLoss) });
      const noWaste = { takeUp: percentAdded(0), loomWaste: times(finishedLength, 0) };
      return warpLengthByAdding({ ...cut, ...noWaste, pieces: 1, shrinkage: percentAdded(lengthLoss) });
    }),
    relation("warpLength", ["pieces", "wovenLength"], ["takeUpLength", "loomWaste"], (given) => {
      const { pieces, wovenLength: woven, takeUpLength, loomWaste } = given;
      const wastes = convention === "waste with every piece" ? pieces : 1;
      const beside = [takeUpLength, loomWaste && times(loomWaste, wastes)].filter((one) => one !== undefined);
      return sum(times(woven, pieces), ...beside);
    }),
    relation("warpYarn", ["ends", "warpLength"], [], ({ ends, warpLength }) =>
      yarnForEnds({ ends: threads * ends, warpLength }),
    ),
    relation("warpYarnAgain", ["warpYarn"], [], ({ warpYarn }) => warpYarn),
    relation("wovenInAll", ["pieces", "wovenLength"], [], ({ pieces, wovenLength: woven }) => times(woven, pieces)),
    convention === "weft taken equal to warp"
      ? relation("weftYarn", ["warpYarn"], [], ({ warpYarn }) => warpYarn)
      : relation("weftYarn", ["picksPerLength", "wovenInAll", "widthInReed"], [], (given) => {
          const { picksPerLength: picks, wovenInAll, widthInReed: width } = given;
          return weftLength({ picks, wovenLength: wovenInAll, widthInReed: width });
        }),
    relation("weftYarn", ["picks", "widthInReed"], [], ({ picks, widthInReed: width }) => times(width, picks)),
    relation("picks", ["picksPerLength", "wovenInAll"], [], ({ picksPerLength: picks, wovenInAll }) =>
      picksInLength({ picks, wovenLength: wovenInAll }),
    ),
    relation("yarnInAll", ["warpYarn", "weftYarn"], [], ({ warpYarn, weftYarn }) => sum(warpYarn, weftYarn)),
    relation("warpMass", ["warpYarn", "lengthPerMass"], [], ({ warpYarn, lengthPerMass }) =>
      yarnMass({ length: warpYarn, count: lengthPerMass }),
    ),
    relation("warpCost", ["warpMass", "costPerPound"], [], ({ warpMass, costPerPound }) =>
      yarnCost({ yarn: warpMass, price: costPerPound, priceMass: pounds(1) }),
    ),
  ];
}
