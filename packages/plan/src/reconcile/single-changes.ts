import { QuantityError } from "@thrum/maths";
import { allAgree, checkedSums } from "./checked-sums.js";
import type { CheckedSum, Stated } from "./checked-sums.js";
import type { FigureName } from "./figures.js";
import type { WayOfReckoning } from "./relations.js";
import type { Amount, StatedFigure } from "./stated-figure.js";

/** A figure that, printed otherwise, would bring all the others into agreement. */
export interface SingleChange {
  readonly figure: FigureName;
  readonly printed: string;
  /** What it would have to be, in the unit printed. */
  readonly needed: number;
  /** How the slip may have come about, where it has a shape. */
  readonly shape: "digits exchanged" | "one digit wrong" | "doubled" | "halved" | "yards and metres confused" | "none";
}

const STEPS = 30;
const CLOSE = 1e-12;
/** No slip of the pen is as large as this. */
const FARTHEST = Math.log(1e4);

function inPrinted(amount: Amount, { unit }: StatedFigure): number {
  return typeof amount === "number" || typeof unit === "string" ? Number(amount) : amount.in(unit);
}

function withValue(stated: Stated, figure: StatedFigure, value: number): Stated {
  const amount = typeof figure.unit === "string" ? value : figure.unit(value);
  return new Map(stated).set(figure.figure, { ...figure, amount });
}

/** The sums with a figure tried, none where it is what the handbook refuses: a width of no end, a loss of everything. */
function sumsWith(stated: Stated, way: WayOfReckoning): readonly CheckedSum[] {
  try {
    return checkedSums(stated, way);
  } catch (error) {
    if (error instanceof QuantityError) return [];
    throw error;
  }
}

/** How far a sum is from what is stated, as the logarithm of their ratio; null where there is no such sum. */
function gap(stated: Stated, way: WayOfReckoning, at: number): number | null {
  const sum = sumsWith(stated, way)[at];
  const figure = sum && stated.get(sum.figure);
  if (sum === undefined || figure === undefined) return null;
  const found = Math.log(inPrinted(sum.reckoned, figure) / inPrinted(sum.stated, figure));
  return Number.isFinite(found) ? found : null;
}

/** The value at which one sum holds: its logarithm goes nearly straight with that of each figure, so a few steps find it. */
function solved(stated: Stated, way: WayOfReckoning, figure: StatedFigure, at: number): number | null {
  const own = inPrinted(figure.amount, figure);
  const fit = (value: number): number => (figure.unit === "count" ? Math.round(value) : value);
  let [before, value] = [own, figure.unit === "count" ? own + 1 : own * 1.1];
  let gapBefore = gap(stated, way, at);
  for (let step = 0; step < STEPS; step++) {
    const gapNow = gap(withValue(stated, figure, value), way, at);
    if (gapNow !== null && Math.abs(gapNow) < CLOSE) return value;
    if (gapBefore === null || gapNow === null || gapNow === gapBefore) return null;
    const slope = (gapNow - gapBefore) / Math.log(value / before);
    const next = fit(value * Math.exp(-gapNow / slope));
    if (!(next > 0) || Math.abs(Math.log(next / own)) > FARTHEST) return null;
    if (Math.abs(next / value - 1) < CLOSE) return next;
    [before, value, gapBefore] = [value, next, gapNow];
  }
  return null;
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
function fitting(
  stated: Stated,
  way: WayOfReckoning,
  sums: readonly CheckedSum[],
  figure: StatedFigure,
  exact: number,
): number | null {
  const { lastPlace, unit } = figure;
  const rounded = Math.round(exact / lastPlace) * lastPlace;
  const candidates = unit === "count" ? [rounded] : [rounded, exact];
  const found = candidates.find((value) => {
    return value > 0 && allAgree(sumsWith(withValue(stated, figure, value), way), sums);
  });
  return found ?? null;
}

/** Every figure which, changed alone, makes all sums agree; a slip with a known shape first, then the smallest change. */
export function singleChanges(stated: Stated, way: WayOfReckoning): readonly SingleChange[] {
  const sums = checkedSums(stated, way);
  const found = [...stated.values()].flatMap((figure) => {
    const own = inPrinted(figure.amount, figure);
    if (own === 0) return [];
    const exacts = sums.flatMap(({ finding }, at) =>
      finding === "differs" ? (solved(stated, way, figure, at) ?? []) : [],
    );
    const [value] = exacts.flatMap((exact) => fitting(stated, way, sums, figure, exact) ?? []);
    if (value === undefined) return [];
    const needed = Number(value.toPrecision(7));
    const shape = shapeOf(figure.printed, String(needed), value / own);
    const change = { figure: figure.figure, printed: figure.printed, needed, shape };
    return [{ change, size: Math.abs(Math.log(value / own)) }];
  });
  const rank = ({ change }: (typeof found)[number]): number => (change.shape === "none" ? 1 : 0);
  return found.sort((one, other) => rank(one) - rank(other) || one.size - other.size).map(({ change }) => change);
}
