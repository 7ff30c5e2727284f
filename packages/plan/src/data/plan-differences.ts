import { equal, isQuantity } from "@thrum/maths";
import type { Path } from "../core/source.js";
import { sameData } from "../job/same-data.js";
import { atPath, figureAt } from "./at-path.js";
import { LISTED, isFigure } from "./listed.js";
import type { PlanData } from "./plan-data.js";

/** A figure that two plans do not share; null where one of them has none. */
export interface PlanDifference {
  readonly path: Path;
  readonly label: string;
  readonly before: unknown;
  readonly after: unknown;
}

function areSame(one: unknown, other: unknown): boolean {
  if (isQuantity(one) && isQuantity(other)) return one.dimension === other.dimension && equal(one, other);
  return sameData(one, other);
}

/** The paths of all figures of a plan. */
export function figurePaths(plan: PlanData): readonly Path[] {
  return LISTED.filter(isFigure).flatMap(({ group, name, scope }): readonly Path[] => {
    if (scope === "plan") return [["figures", group, name]];
    const rows = atPath(plan, ["figures", group]);
    return Object.keys(typeof rows === "object" && rows !== null ? rows : {}).map((row) => [
      "figures",
      group,
      row,
      name,
    ]);
  });
}

/**
 * What a change to a job changes: the figures of two plans that differ, values side by side, in the order of the list.
 *
 * @param before a plan; of a copy, what `planFrom` makes of it
 * @param after the plan of the job with something changed
 */
export function planDifferences(before: PlanData, after: PlanData): readonly PlanDifference[] {
  const paths = new Map([before, after].flatMap(figurePaths).map((path) => [JSON.stringify(path), path]));
  return [...paths.values()].flatMap((path) => {
    const [one, other] = [figureAt(before, path)?.data, figureAt(after, path)?.data];
    const [was, is] = [one?.value ?? null, other?.value ?? null];
    return areSame(was, is) ? [] : [{ path, label: one?.label ?? other?.label ?? "", before: was, after: is }];
  });
}
