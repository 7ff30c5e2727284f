import { nodeOf } from "../core/source.js";
import type { Path } from "../core/source.js";
import { PLAN } from "../figures/list.js";
import { writtenPath } from "../job/written-path.js";
import { atPath } from "./at-path.js";
import { LISTED, NAMES } from "./listed.js";
import type { PlanData } from "./plan-data.js";

function needsAt(plan: PlanData, path: Path): readonly Path[] {
  const needs = atPath(plan, [...path, "needs"]);
  return Array.isArray(needs) ? needs.filter((one: unknown): one is Path => Array.isArray(one)) : [];
}

/**
 * The keys that figures and parts wait for, each once, in the order met, as they are written in a job file.
 *
 * @param plan a plan, or a copy of one
 * @param of their groups and names, such as `["yarn", "missing"]`: every row of it, and the rows themselves where they are
 * not known
 */
export function waitsFor(plan: PlanData, of: readonly (readonly [group: string, name: string])[]): readonly Path[] {
  const needs = of.flatMap(([group, name]) => {
    const scope = LISTED.find((one) => one.group === group && one.name === name)?.scope ?? "plan";
    const maker = PLAN.scopes[scope];
    if (maker === undefined) return needsAt(plan, ["figures", group, name]);
    const rows = atPath(plan, ["figures", group]);
    const named = typeof rows === "object" && rows !== null ? Object.keys(rows) : [];
    const ofRows = needsAt(plan, ["figures", ...(NAMES.get(nodeOf(maker)) ?? [])]);
    return [...ofRows, ...named.flatMap((row) => needsAt(plan, ["figures", group, row, name]))];
  });
  return [...new Map(needs.map(writtenPath).map((path) => [JSON.stringify(path), path])).values()];
}
