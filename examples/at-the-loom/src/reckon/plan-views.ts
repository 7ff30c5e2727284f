import { faultText, pathText, planWarp, readJob } from "@thrum/plan";
import type { Fault, Job, PlanData } from "@thrum/plan";

/** A fault with its place as it is written and its sentence. */
export interface ToldFault {
  readonly path: string;
  readonly says: string;
  readonly fault: Fault;
}

export type Reckoned =
  | { readonly ok: true; readonly job: Job; readonly plan: PlanData }
  | { readonly ok: false; readonly faults: readonly ToldFault[] };

const told = (fault: Fault): ToldFault => ({ path: pathText(fault.path), says: faultText(fault), fault });

function reckoned(text: string): Reckoned {
  const reading = readJob(text);
  if (!reading.ok) return { ok: false, faults: reading.faults.map(told) };
  return { ok: true, job: reading.job, plan: planWarp(reading.job) };
}

/** What the shelf, the plan and the sheets ask: each takes plain data and gives plain data. */
export const planViews = { reckoned };
