import { isQuantity } from "@thrum/maths";
import { expect, it } from "vitest";
import { examplePlans } from "#ci/example-plans.js";
import { apart, fractionFrom, inBase, linesInFractions } from "#ci/rational.js";
import type { Fraction } from "#ci/rational.js";
import type { Origin } from "../core/origin.js";
import type { Path } from "../core/source.js";
import { amountAt, figureAt } from "./at-path.js";
import { calculationOf } from "./calculation-of.js";
import { figurePaths } from "./plan-differences.js";
import type { PlanData } from "./plan-data.js";

type Exact = Fraction | readonly Fraction[];

function plain(value: unknown): Exact {
  if (Array.isArray(value)) return value.map((one) => plain(one) as Fraction);
  return isQuantity(value) ? inBase(value) : fractionFrom(String(value));
}

/** Every figure again in whole-number fractions, from the keys of the job on: no figure is read where a formula gives it. */
function fractions(plan: PlanData): { readonly of: (path: Path) => Exact } {
  const known = new Map<string, Exact>();
  const ofOrigin = (origin: Origin): Exact => {
    if ("list" in origin) return origin.list.map((one) => ofOrigin(one) as Fraction);
    if ("path" in origin && figureAt(plan, origin.path) !== null) return of(origin.path);
    return plain(amountAt(plan, origin));
  };
  const worked = (path: Path): Exact => {
    const found = figureAt(plan, path);
    if (found === null) throw new RangeError(path.join(" "));
    const { from, calculation, value } = found.data;
    if (calculation === null) return from["is"] === undefined ? plain(value) : ofOrigin(from["is"]);
    const input = Object.fromEntries(Object.entries(from).map(([name, origin]) => [name, ofOrigin(origin)]));
    const lines = linesInFractions(calculationOf(found).declaration, input);
    return [...lines.values()].at(-1) as Fraction;
  };
  const of = (path: Path): Exact => {
    const key = JSON.stringify(path);
    const exact = known.get(key) ?? worked(path);
    known.set(key, exact);
    return exact;
  };
  return { of };
}

it.each(examplePlans)("%s: every figure again in fractions, from the job on", (_, plan) => {
  const { of } = fractions(plan);
  let compared = 0;
  for (const path of figurePaths(plan)) {
    const data = figureAt(plan, path)?.data;
    if (data === undefined || data.value === null || typeof data.value === "string") continue;
    if (typeof data.value !== "number" && !isQuantity(data.value)) continue;
    // A number without a unit is a double, good to 15 digits.
    const most = typeof data.value === "number" && !Number.isInteger(data.value) ? 1e-14 : 1e-30;
    expect(apart(of(path) as Fraction, plain(data.value) as Fraction), path.join(" ")).toBeLessThanOrEqual(most);
    compared += data.calculation === null ? 0 : 1;
  }
  expect(compared).toBeGreaterThan(4);
});
