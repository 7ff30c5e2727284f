import type { PlanData } from "./plan-data.js";

/** Whether nothing stands against the warp that must be put right first. */
export function canBeWoven({ figures }: PlanData): boolean {
  return Object.values(figures.told).every(({ value }) => (value ?? []).every(({ standing }) => standing !== "must"));
}
