import { QuantityError, check, unitOf, isQuantity } from "@thrum/maths";
import type { Claim, Verdict } from "@thrum/maths";
import type { Origin } from "../core/origin.js";
import type { Path } from "../core/source.js";
import { work } from "../core/work.js";
import { PLAN } from "../figures/list.js";
import { pathText } from "../job/fault.js";
import { figureAt, figureOf, workedAt } from "./at-path.js";
import type { Found } from "./at-path.js";
import { calculationOf } from "./calculation-of.js";
import type { PlanData } from "./plan-data.js";
import { slipsOf } from "./slips-above.js";
import type { SlipAbove, Target } from "./slips-above.js";
import { inputsOf } from "./working.js";

/** What can be said of a number somebody worked out for a figure of the plan. */
export interface CheckedFigure {
  /** By the formula of the figure itself. */
  readonly verdict: Verdict;
  /** The slips of figures above that give the number; looked for where none of its own does. */
  readonly above: readonly SlipAbove[];
  /** All of it in sentences. */
  readonly says: readonly string[];
}

function pathsIn(origin: Origin): readonly Path[] {
  if ("list" in origin) return origin.list.flatMap(pathsIn);
  return "path" in origin ? [origin.path] : [];
}

/** The figures with a formula that a figure is worked out from, the nearest first. */
function figuresAbove(plan: PlanData, below: Found): readonly Found[] {
  const seen = new Map<string, Found>();
  let level: readonly Found[] = [below];
  while (level.length > 0) {
    const next = level.flatMap(({ data }) => Object.values(data.from).flatMap(pathsIn));
    level = next.flatMap((path) => {
      const found = figureAt(plan, path);
      const key = JSON.stringify(path);
      if (found === null || seen.has(key)) return [];
      seen.set(key, found);
      return [found];
    });
  }
  return [...seen.values()].filter(({ data }) => data.calculation !== null);
}

function targetOf({ written, unit }: Claim<string>, value: unknown): Target | null {
  const own = isQuantity(value) ? unitOf(value) : null;
  if (unit !== null && unit.dimension !== own?.dimension) return null;
  const decimals = written.split(".")[1]?.length ?? 0;
  return { claimed: Number(written), half: 0.5 / 10 ** decimals, unit: unit ?? own };
}

function sentence({ written, unit }: Claim<string>, { path, label, says }: SlipAbove): string {
  const claimed = unit === null ? written : `${written} ${unit.symbol}`;
  const row = path.length > 3 ? `, ${String(path[2])}` : "";
  return `${claimed}: ${label}${row}: ${says}.`;
}

/**
 * Judges a number worked out by hand for a figure of the plan, and says where it went wrong: with the figure's own formula
 * first; where no slip of that gives it, with every figure above it.
 *
 * @param plan a plan; of a copy, what `planFrom` makes of it
 * @param path where the figure stands, such as `["figures", "yarn", "natural", "inAll"]`
 * @param claim the number as it was written, with its unit
 * @throws QuantityError "missing" for a path that leads to no figure or to one without a sum, else as `check` does
 */
export function checkFigure(plan: PlanData, path: Path, claim: Claim<string>): CheckedFigure {
  const below = workedAt(plan, figureOf("checkFigure", plan, path));
  if (below === null || below.data.value === null) {
    const expected = "a figure that a formula gives";
    const received = `${pathText(path)}, which is counted, waits or has no answer`;
    throw new QuantityError({
      code: "missing",
      function: "checkFigure",
      path: ["path"],
      expected,
      received,
      remedy: "",
    });
  }
  const verdict = check(calculationOf(below), inputsOf(plan, below), claim);
  const target = targetOf(claim, below.data.value);
  if (verdict.value !== "wrong" || verdict.slips.length > 0 || target === null)
    return { verdict, above: [], says: verdict.says };
  const at = work(PLAN, plan.job);
  const figures = figuresAbove(plan, below);
  const chain = { plan, at, among: figures.length };
  const above = figures.flatMap((one) => slipsOf(chain, below, one, target));
  const says = above.length === 0 ? verdict.says : above.map((one) => sentence(claim, one));
  return { verdict, above, says };
}
