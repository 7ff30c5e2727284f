import { explain } from "@thrum/maths";
import type { Working } from "@thrum/maths";
import type { Path } from "../core/source.js";
import { amountAt, figureOf, workedAt } from "./at-path.js";
import type { Found } from "./at-path.js";
import { calculationOf } from "./calculation-of.js";
import type { PlanData } from "./plan-data.js";

/** What the formula of a figure was given, by the names of its inputs. */
export function inputsOf(plan: PlanData, { data }: Found): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(data.from).map(([name, origin]) => [name, amountAt(plan, origin)]));
}

/**
 * The working of a figure, from the plan's data alone.
 *
 * @param plan a plan; of a copy, what `planFrom` makes of it
 * @param path where the figure stands, such as `["figures", "yarn", "natural", "missing"]`
 * @returns null where there is no sum: it waits, has no answer, is counted, or is a key as it stands
 * @throws QuantityError "missing" for a path that leads to no figure
 */
export function working(plan: PlanData, path: Path): Working | null {
  const found = workedAt(plan, figureOf("working", plan, path));
  if (found === null || found.data.value === null) return null;
  return explain(calculationOf(found), inputsOf(plan, found));
}
