import { wrongKind } from "../job/wrong-kind.js";
import type { WarpPlan } from "./warp-plan.js";

/** Shared by every copy of the package; the number is that of the layout. */
const BRAND = Symbol.for("thrum.plan.1");

/** Marks what `planWarp` made, where neither JSON nor a comparison sees it. */
export function madePlan(plan: WarpPlan): WarpPlan {
  return Object.defineProperty(plan, BRAND, { value: true });
}

/** Refuses what is no plan, or only a copy of one. */
export function refuseUnlessPlan(where: string, plan: unknown): void {
  if (typeof plan === "object" && plan !== null && Object.isFrozen(plan) && Object.hasOwn(plan, BRAND)) return;
  throw wrongKind(where, "a plan made by planWarp", plan, "Give the plan itself: a copy of one is only data.");
}
