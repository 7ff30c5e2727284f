import type { Source } from "../../engine/formula/index.js";
import { oneOf, readInputs } from "../../engine/formula/index.js";
import {
  allFiberArts,
  bastelfrau,
  brooks1892,
  caws2023,
  cawsThrums2023,
  gistYarn,
  handwovenPlanning,
  hossen2015,
  reedAirSpace,
  sleepingDog2006,
  sparksearcherBalanced,
  sponsEncyclopaedia,
  weftHanded2010,
  yarnworker,
} from "../../sources/index.js";
import { feet, inches, percentAdded, percentLost, percentOf } from "../../units/index.js";
import type { Addition, Length, Loss, Share } from "../../units/index.js";

/** What one source allows, from so much to so much. */
export interface PublishedAllowance<Q> {
  readonly from: Q;
  readonly to: Q;
  readonly source: Source;
  readonly at: string;
}

const range = <Q>(source: Source, at: string, from: Q, to: Q): PublishedAllowance<Q> =>
  Object.freeze({ from, to, source, at });

interface Allowances {
  readonly "loom waste, rigid heddle, direct warping": Length;
  readonly "loom waste, rigid heddle, indirect warping": Length;
  readonly "loom waste, rigid heddle, generous": Length;
  readonly "loom waste, table loom, generous": Length;
  readonly "loom waste, floor loom, generous": Length;
  readonly "loom waste, floor loom": Length;
  readonly "loom waste, any loom": Length;
  readonly "loom waste, two patterns for towels": Length;
  readonly "loom waste and take-up, scarf": Length;
  readonly "shrinkage, wool, moderate washing": Loss;
  readonly "take-up and shrinkage together, beginners": Addition;
  readonly "crimp of the warp, poplin": Addition;
  readonly "crimp of the weft, poplin": Addition;
  readonly "length of warp over cloth, jute": Addition;
  readonly "width in the reed over cloth of 37 inches, jute": Length;
  readonly "length and width, where neither matters much": Addition;
  readonly "shrinkage, half-waffle of 8/2 cotton": Loss;
  readonly "length over woven, plain weave, hole-and-slot loom": Addition;
  readonly "length over woven, warp rep, hole-and-slot loom": Addition;
  readonly "free share of a dent, power-loom reed": Share;
  readonly "eye of a knitted cotton heald": Length;
}

type Table = { readonly [N in keyof Allowances]: PublishedAllowance<Allowances[N]> };

/** Nobody's default: each stands for one source, on one loom or cloth. */
const published = (): Table => ({
  "loom waste, rigid heddle, direct warping": range(yarnworker, "opening", inches(18), inches(22)),
  "loom waste, rigid heddle, indirect warping": range(yarnworker, "opening", inches(22), inches(26)),
  "loom waste, rigid heddle, generous": range(cawsThrums2023, "opening", feet(2), feet(2)),
  "loom waste, table loom, generous": range(cawsThrums2023, "opening", feet(3), feet(3)),
  "loom waste, floor loom, generous": range(cawsThrums2023, "opening", feet(5), feet(6)),
  "loom waste, floor loom": range(caws2023, "whole post", inches(36), inches(60)),
  "loom waste, any loom": range(allFiberArts, "whole page", inches(27), inches(36)),
  "loom waste, two patterns for towels": range(gistYarn, "opening", inches(20), inches("25.5")),
  "loom waste and take-up, scarf": range(sparksearcherBalanced, "whole post", inches(20), inches(24)),
  "shrinkage, wool, moderate washing": range(weftHanded2010, "14 April 2010", percentLost(10), percentLost(20)),
  "take-up and shrinkage together, beginners": range(allFiberArts, "whole page", percentAdded(10), percentAdded(15)),
  "crimp of the warp, poplin": range(hossen2015, "range of crimp", percentAdded(14), percentAdded(14)),
  "crimp of the weft, poplin": range(hossen2015, "range of crimp", percentAdded(2), percentAdded(2)),
  "length of warp over cloth, jute": range(
    sponsEncyclopaedia,
    "Jute Manufactures, part 7",
    percentAdded(10),
    percentAdded(10),
  ),
  "width in the reed over cloth of 37 inches, jute": range(
    sponsEncyclopaedia,
    "Jute Manufactures, part 7",
    inches(2),
    inches(2),
  ),
  "length and width, where neither matters much": range(
    handwovenPlanning,
    "section on length and width",
    percentAdded(10),
    percentAdded(10),
  ),
  "shrinkage, half-waffle of 8/2 cotton": range(sleepingDog2006, "4 September 2006", percentLost(18), percentLost(18)),
  "length over woven, plain weave, hole-and-slot loom": range(
    bastelfrau,
    "whole page",
    percentAdded(20),
    percentAdded(25),
  ),
  "length over woven, warp rep, hole-and-slot loom": range(bastelfrau, "whole page", percentAdded(5), percentAdded(10)),
  "free share of a dent, power-loom reed": range(reedAirSpace, "question and solution", percentOf(60), percentOf(60)),
  "eye of a knitted cotton heald": range(brooks1892, "healds", inches("0.25"), inches("0.25")),
});

export type AllowanceName = keyof Allowances;

/**
 * An allowance as one source gives it, picked by name; no calculation takes one unasked.
 *
 * @param name what it allows for, and on what
 * @throws QuantityError "unknown-word" for a name that is none of them
 * @example publishedAllowance("loom waste, floor loom").to.in(inches) // 60
 */
export function publishedAllowance<N extends AllowanceName>(name: N): PublishedAllowance<Allowances[N]> {
  const table = published();
  readInputs("publishedAllowance", { name: oneOf(Object.keys(table), "what it allows for, and on what") }, { name });
  return table[name];
}
