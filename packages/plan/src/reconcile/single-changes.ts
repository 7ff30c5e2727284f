import { figureKinds } from "./figures.js";
import type { FigureName } from "./figures.js";
import { checkedSums } from "./misfits.js";
import type { Stated } from "./misfits.js";
import type { StatedFigure } from "./stated-figure.js";

/** A figure that, printed otherwise, would bring all the others into agreement. */
export interface SingleChange {
  readonly figure: FigureName;
  readonly printed: string;
  /** What it would have to be, in the unit printed. */
  readonly needed: number;
  /** How the slip may have come about, where it has a shape. */
  readonly shape: "digits exchanged" | "one digit wrong" | "doubled" | "halved" | "yards and metres confused" | "none";
}

const STEPS = 60;
const FARTHEST = 1e4;
/** A loss of the whole would divide by nothing. */
const ALMOST_ALL = 99.9;

function withValue(stated: Stated, figure: StatedFigure, value: number): Stated {
  return new Map(stated).set(figure.figure, { ...figure, value });
}

function gap(stated: Stated, at: number): number {
  const sum = checkedSums(stated, null, "nearest")[at];
  return sum === undefined ? 0 : sum.reckoned - sum.stated;
}

/** The value at which one sum holds exactly: sums rise or fall steadily in each of their figures, so halving finds it. */
function solved(stated: Stated, figure: StatedFigure, at: number): number | null {
  const isPercent = figureKinds[figure.figure].base === "percent";
  let [low, high] = [figure.value / FARTHEST, isPercent ? ALMOST_ALL : figure.value * FARTHEST];
  const sign = Math.sign(gap(withValue(stated, figure, low), at));
  if (sign === 0 || sign === Math.sign(gap(withValue(stated, figure, high), at))) return null;
  for (let step = 0; step < STEPS; step++) {
    const middle = Math.sqrt(low * high);
    if (Math.sign(gap(withValue(stated, figure, middle), at)) === sign) low = middle;
    else high = middle;
  }
  return high;
}

function shapeOf(printed: string, needed: string, ratio: number): SingleChange["shape"] {
  if (Math.abs(ratio - 2) < 1e-3) return "halved";
  if (Math.abs(ratio - 0.5) < 1e-3) return "doubled";
  if (Math.abs(ratio - 0.9144) < 1e-3 || Math.abs(ratio - 1 / 0.9144) < 1e-3) return "yards and metres confused";
  if (printed.length !== needed.length) return "none";
  const wrong = Array.from(printed).flatMap((digit, at) => (digit === needed[at] ? [] : [at]));
  if (wrong.length === 1) return "one digit wrong";
  const [first = 0, second = 0] = wrong;
  const isExchange = wrong.length === 2 && printed[first] === needed[second] && printed[second] === needed[first];
  return isExchange ? "digits exchanged" : "none";
}

/** The value itself, or rounded as the page prints that figure, whichever comes first and makes every sum agree. */
function fitting(stated: Stated, figure: StatedFigure, exact: number): number | null {
  const { lastPlace } = figure;
  const rounded = Math.round(exact / lastPlace) * lastPlace;
  const candidates = figureKinds[figure.figure].base === "count" ? [rounded] : [rounded, exact];
  const found = candidates.find((value) => {
    return value > 0 && checkedSums(withValue(stated, figure, value), null, "nearest").every(({ agrees }) => agrees);
  });
  return found ?? null;
}

/** Every figure which, changed alone, makes all sums agree; a slip with a known shape first, then the smallest change. */
export function singleChanges(stated: Stated): readonly SingleChange[] {
  const sums = checkedSums(stated, null, "nearest");
  const found = [...stated.values()].flatMap((figure) => {
    if (figure.value === 0) return [];
    const exacts = sums.flatMap(({ agrees }, at) => (agrees ? [] : (solved(stated, figure, at) ?? [])));
    const [value] = exacts.flatMap((exact) => fitting(stated, figure, exact) ?? []);
    if (value === undefined) return [];
    const needed = Number((value / figure.scale).toPrecision(7));
    const shape = shapeOf(figure.printed, String(needed), value / figure.value);
    const change = { figure: figure.figure, printed: figure.printed, needed, shape };
    return [{ change, size: Math.abs(Math.log(value / figure.value)) }];
  });
  const rank = ({ change }: (typeof found)[number]): number => (change.shape === "none" ? 1 : 0);
  return found.sort((one, other) => rank(one) - rank(other) || one.size - other.size).map(({ change }) => change);
}
