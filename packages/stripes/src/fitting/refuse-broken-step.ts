import { refuse } from "../refusal/check.js";

/** Refuses ends that are no multiple of the step. */
export function refuseBrokenStep(refusedBy: string, ends: number, step: number): void {
  if (ends % step === 0) return;
  refuse(refusedBy, "does-not-fit", ["ends"], {
    expected: `a multiple of ${step}`,
    received: ends,
    remedy: "Add or drop ends first.",
  });
}
