import { check, isQuantity, unitOf } from "@thrum/maths";
import type { Claim, Quantity, Unit } from "@thrum/maths";
import type { Path } from "../core/source.js";
import { isRows } from "../core/row.js";
import type { Row, Work } from "../core/row.js";
import type { Found } from "./at-path.js";
import { calculationOf } from "./calculation-of.js";
import type { PlanData } from "./plan-data.js";
import { inputsOf } from "./working.js";

/** A slip of a figure above that gives the number claimed below. */
export interface SlipAbove {
  readonly path: Path;
  readonly label: string;
  /** "a sum that … gives this" */
  readonly says: string;
  /** What the figure above comes to with the slip, in its own unit. */
  readonly value: string;
}

/** The number claimed, as far as its digits go, in the unit it is judged in. */
export interface Target {
  readonly claimed: number;
  readonly half: number;
  readonly unit: Unit<string> | null;
}

/** The plan that is looked through, and how many figures of it. */
export interface Chain {
  readonly plan: PlanData;
  readonly at: Work;
  readonly among: number;
}

type Amount = number | Quantity<string>;

function isAmount(value: unknown): value is Amount {
  return typeof value === "number" || isQuantity(value);
}

function numberIn(value: unknown, unit: Unit<string> | null): number {
  if (typeof value === "number") return value;
  return isQuantity(value) && unit !== null && value.dimension === unit.dimension ? value.in(unit) : Number.NaN;
}

function rowNamed(at: Work, scope: string, name: string | null): Row | null {
  const rows = scope === "plan" ? [] : at.rowsOf(scope);
  return isRows(rows) ? (rows.find((row) => row.name === name) ?? null) : null;
}

const MOST_STEPS = 8;
/** As near as a double tells two such sums apart. */
const NEAR = 1e-11;

/** The number that a figure above must have come to for the claim, and how fast the claim grows with it. */
function wanted(
  of: (above: number) => number,
  now: number,
  claimed: number,
): readonly [at: number, slope: number] | null {
  let [x, y] = [now, of(now)];
  let next = now === 0 ? 1 : now * 1.01;
  let slope = 0;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const found = of(next);
    if (!Number.isFinite(found) || found === y) return slope === 0 ? null : [x, slope];
    slope = (found - y) / (next - x);
    [x, y] = [next, found];
    if (Math.abs(y - claimed) <= NEAR * Math.abs(claimed)) return [x, slope];
    next = x + (claimed - y) / slope;
  }
  return null;
}

/** Texts of the numbers, to as many digits as the spread leaves, that stand nearest to what is wanted. */
function writtenNear(at: number, spread: number): readonly string[] {
  const decimals = Math.min(12, Math.max(0, Math.floor(-Math.log10(2 * spread))));
  return [...new Set([at - spread, at, at + spread].map((one) => one.toFixed(decimals)))];
}

/**
 * The slips of one figure above that give the number claimed: what the figure would have to be is looked for, judged by
 * its own formula, and each slip found put in its place.
 *
 * `check` names one plain slip in fifty, and `among` so many figures are asked: what is likely of one of them is likely to be
 * found in some of them by chance. So the odds are split over them. Each is judged on fewer digits, as if its cells were
 * that many times as wide; only what is certain there is taken, and it is then held to all the digits of the claim.
 */
export function slipsOf({ plan, at, among }: Chain, below: Found, above: Found, target: Target): readonly SlipAbove[] {
  const { value } = above.data;
  if (!isAmount(value)) return [];
  const unit = typeof value === "number" ? null : unitOf(value);
  const [own, rowAbove] = [rowNamed(at, below.listed.scope, below.row), above.row];
  const withAbove = (other: Amount): number => {
    const state = at.instead({ of: above.listed.node, row: rowAbove, value: other }).stateOf(below.listed.node, own);
    return state.is === "there" ? numberIn(state.value, target.unit) : Number.NaN;
  };
  const amount = (number: number | string): Amount => (unit === null ? Number(number) : unit(number));
  const found = wanted((number) => withAbove(amount(number)), numberIn(value, unit), target.claimed);
  if (found === null || found[0] <= 0) return [];
  const texts = writtenNear(found[0], (among * target.half) / Math.abs(found[1]));
  const calculation = calculationOf(above);
  const slips = texts.flatMap((written) => {
    const claim: Claim<string> = { written, unit };
    return check(calculation, inputsOf(plan, above), claim).slips.filter(({ certainty }) => certainty === "certain");
  });
  const { path, data } = above;
  const once = new Map(slips.map((slip) => [slip.says, slip]));
  return [...once.values()].flatMap(({ says, value: slipped }) => {
    const isIt = Math.abs(withAbove(amount(slipped)) - target.claimed) <= target.half * (1 + NEAR);
    return isIt ? [{ path, label: data.label, says, value: slipped }] : [];
  });
}
