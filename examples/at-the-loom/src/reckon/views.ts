// What the worker answers, by name. Screens ask for it through client.ts; only this folder and draft/ import the packages.
import type { loomViews } from "./loom-views.js";
import { planViews } from "./plan-views.js";

export type Views = typeof planViews & typeof loomViews;
type View = (...given: never[]) => unknown;

const isOfPlan = (view: keyof Views): view is keyof typeof planViews => Object.hasOwn(planViews, view);

/** A view by its name; what only the loom asks for is loaded when it is first asked. */
export async function viewNamed(view: keyof Views): Promise<View> {
  if (isOfPlan(view)) return planViews[view];
  const { loomViews } = await import("./loom-views.js");
  return loomViews[view];
}
