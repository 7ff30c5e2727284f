import type { PlanData } from "@thrum/plan";

/** A finding of the plan, in its own sentence. */
export interface Finding {
  readonly mark: "MUST" | "CHECK" | "ASK" | "note";
  readonly about: string;
  readonly says: string;
}

const MARKS = { must: "MUST", check: "CHECK", ask: "ASK", free: "note" } as const;
const ORDER: readonly Finding["mark"][] = ["MUST", "CHECK", "ASK", "note"];

/** All findings, what must be put right first of all; whether each is here or there is the package's to say. */
export function toldOf(plan: PlanData): readonly Finding[] {
  const told = Object.values(plan.figures.told).flatMap(({ value }) => value ?? []);
  const found = told.map(({ standing, about, says }): Finding => ({ mark: MARKS[standing], about, says }));
  return ORDER.flatMap((mark) => found.filter((one) => one.mark === mark));
}
