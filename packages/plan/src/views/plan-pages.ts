import { planFrom } from "../data/plan-from.js";
import type { PlanData } from "../data/plan-data.js";
import { sectionsOf } from "./section.js";
import type { Section } from "./block.js";

/**
 * The pages of a plan as data, for a program that shows them in a way of its own: every sentence, caution and step in
 * the order of the work, as `planText` and `planHtml` print them.
 *
 * @param plan what `planWarp` gives, or a copy of it
 * @returns the pages that say something of this job; the workings are left out
 */
export function planPages(plan: PlanData): readonly Section[] {
  return sectionsOf(planFrom(plan), { without: "workings" }).sections;
}
