import type { FigureName } from "./figures.js";

/** One sum of a project: a figure from others; what is named under `orNone` counts as nothing where not stated. */
export interface Relation {
  readonly answer: FigureName;
  readonly from: readonly FigureName[];
  readonly orNone: readonly FigureName[];
  readonly value: (of: (name: FigureName) => number) => number;
}

export type SumConvention =
  | "adding rule"
  | "hem once"
  | "pairs counted as ends"
  | "edge ends left out"
  | "waste with every piece"
  | "weft taken equal to warp";

type Sum = Relation["value"];

function relation(
  answer: FigureName,
  from: readonly FigureName[],
  orNone: readonly FigureName[],
  value: Sum,
): Relation {
  return { answer, from, orNone, value };
}

/** What a loss does to a size: divided out, or by the adding rule added on. */
function before(size: number, percent: number, convention: SumConvention | null): number {
  return convention === "adding rule" ? size * (1 + percent / 100) : size / (1 - percent / 100);
}

/** The sums of a project in their order, each later one free to use what an earlier one gave. */
export function relations(convention: SumConvention | null): readonly Relation[] {
  const hems = convention === "hem once" ? 1 : 2;
  const threads = convention === "pairs counted as ends" ? 2 : 1;
  const edges = convention === "edge ends left out" ? 0 : 1;
  const allEnds = (of: (name: FigureName) => number, pattern: number): number => pattern + edges * of("edgeEnds");
  return [
    relation("widthInReed", ["finishedWidth", "widthLoss"], [], (of) =>
      before(of("finishedWidth"), of("widthLoss"), convention),
    ),
    relation("ends", ["sett", "widthInReed"], ["edgeEnds"], (of) => allEnds(of, of("sett") * of("widthInReed"))),
    relation("ends", ["repeats", "endsPerRepeat"], ["balancingEnds", "edgeEnds"], (of) =>
      allEnds(of, of("repeats") * of("endsPerRepeat") + of("balancingEnds")),
    ),
    relation("wovenLength", ["finishedLength", "lengthLoss"], ["hemEachEnd"], (of) =>
      before(of("finishedLength") + hems * of("hemEachEnd"), of("lengthLoss"), convention),
    ),
    relation("warpLength", ["pieces", "wovenLength", "loomWaste"], ["takeUpLength"], (of) => {
      const wastes = convention === "waste with every piece" ? of("pieces") : 1;
      return of("pieces") * of("wovenLength") + of("takeUpLength") + wastes * of("loomWaste");
    }),
    relation("warpYarn", ["ends", "warpLength"], [], (of) => threads * of("ends") * of("warpLength")),
    relation("warpYarnAgain", ["warpYarn"], [], (of) => of("warpYarn")),
    relation("wovenInAll", ["pieces", "wovenLength"], [], (of) => of("pieces") * of("wovenLength")),
    relation("picks", ["picksPerLength", "wovenInAll"], [], (of) => of("picksPerLength") * of("wovenInAll")),
    convention === "weft taken equal to warp"
      ? relation("weftYarn", ["warpYarn"], [], (of) => of("warpYarn"))
      : relation("weftYarn", ["picks", "widthInReed"], [], (of) => of("picks") * of("widthInReed")),
    relation("yarnInAll", ["warpYarn", "weftYarn"], [], (of) => of("warpYarn") + of("weftYarn")),
    relation("warpMass", ["warpYarn", "lengthPerMass"], [], (of) => of("warpYarn") / 36 / of("lengthPerMass")),
    relation("warpCost", ["warpMass", "costPerPound"], [], (of) => of("warpMass") * of("costPerPound")),
  ];
}
