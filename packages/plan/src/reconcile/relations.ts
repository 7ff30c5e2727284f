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
import type { Length } from "@thrum/maths";
import type { FigureName, ProjectFigures } from "./figures.js";
import type { Amount } from "./stated-figure.js";

export type SumConvention =
  | "adding rule"
  | "hem once"
  | "pairs counted as ends"
  | "edge ends left out"
  | "waste with every piece"
  | "weft taken equal to warp"
  | "edge dents crammed"
  | "places left empty";

/** "in round numbers": yarn that is printed in tens or hundreds is rounded, or rounded up, to them. */
export type Rounding = "nearest" | "roundDown" | "roundUp" | "in round numbers";

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

/** The width that the ends take: a page may give its width only roughly, and reckon from the ends. */
export function widthOfEnds({ convention }: WayOfReckoning): Relation {
  return relation("widthInReed", ["ends", "sett"], ["edgeEnds"], ({ ends, sett, edgeEnds = 0 }) =>
    reedWidth({ ends: ends - (convention === "edge ends left out" ? 0 : edgeEnds), sett }),
  );
}

/** Ends are whole: how the page rounds decides which. */
function endsInWidth(
  { sett, widthInReed: width }: Pick<ProjectFigures, "sett" | "widthInReed">,
  rounding: Rounding,
): number {
  const own = rounding === "in round numbers" ? "nearest" : rounding;
  return solveFor(reedWidth, "ends", "width", { rounding: own })({ sett, width });
}

/** Weft with its allowance on top. */
function allowed(weft: Length, percent: number): Length {
  return sum(weft, times(times(weft, percent), "0.01"));
}

/** The sums of a project in their order, each later one free to use what an earlier one gave. */
export function relations({ convention, rounding }: WayOfReckoning): readonly Relation[] {
  const adds = convention === "adding rule";
  const hems = convention === "hem once" ? 0.5 : 1;
  const threads = convention === "pairs counted as ends" ? 2 : 1;
  const crammed = convention === "edge dents crammed" ? 2 : 0;
  const edges = convention === "edge ends left out" ? 0 : 1;
  return [
    relation("widthInReed", ["finishedWidth", "widthLoss"], [], ({ finishedWidth, widthLoss }) =>
      adds
        ? widthInReedByAdding({ finishedWidth, allowance: percentAdded(widthLoss) })
        : widthInReedFromFinished({ finishedWidth, reedToFinished: percentLost(widthLoss) }),
    ),
    relation("ends", ["sett", "widthInReed"], ["edgeEnds", "endsPerDent"], (given) => {
      const { edgeEnds = 0, endsPerDent = 0, sett, widthInReed: width } = given;
      return endsInWidth({ sett, widthInReed: width }, rounding) + edges * edgeEnds + crammed * endsPerDent;
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
      : relation("weftYarn", ["picksPerLength", "wovenInAll", "widthInReed"], ["weftAllowance"], (given) => {
          const { picksPerLength: picks, wovenInAll, widthInReed: width, weftAllowance = 0 } = given;
          return allowed(weftLength({ picks, wovenLength: wovenInAll, widthInReed: width }), weftAllowance);
        }),
    relation("weftYarn", ["picks", "widthInReed"], ["weftAllowance"], (given) => {
      const { picks, widthInReed: width, weftAllowance = 0 } = given;
      return allowed(times(width, picks), weftAllowance);
    }),
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
