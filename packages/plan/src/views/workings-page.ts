import { asText } from "@thrum/maths";
import type { Path } from "../core/source.js";
import { atPath } from "../data/at-path.js";
import { LISTED, isFigure } from "../data/listed.js";
import type { PlanData } from "../data/plan-data.js";
import { working } from "../data/working.js";
import type { Block, Section } from "./block.js";

/** Where every figure of a plan stands, row by row. */
function pathsOf(plan: PlanData): readonly Path[] {
  const figures: Readonly<Record<string, Readonly<Record<string, unknown>>>> = plan.figures;
  return LISTED.filter(isFigure).flatMap(({ group, name, scope }): readonly Path[] => {
    if (scope === "plan") return [["figures", group, name]];
    return Object.keys(figures[group] ?? {}).map((row) => ["figures", group, row, name]);
  });
}

/** The sum behind every number, equal ones once, each with its source. */
export function workingsSection(plan: PlanData): Section {
  const byLines = new Map<string, string[]>();
  for (const path of pathsOf(plan)) {
    const sum = working(plan, path);
    if (sum === null) continue;
    const key = asText(sum);
    const label = String(atPath(plan, [...path, "label"]));
    const of = path.length === 4 ? `${String(path[2])}: ${label}` : label;
    byLines.set(key, [...(byLines.get(key) ?? []), of]);
  }
  const blocks = [...byLines].map(([key, headings]): Block => {
    const [, ...lines] = key.split("\n");
    return { is: "lines", heading: [...new Set(headings)].join("; "), lines };
  });
  return { name: "workings", heading: "Workings and sources", blocks, needs: [], isOfJob: blocks.length > 0 };
}
