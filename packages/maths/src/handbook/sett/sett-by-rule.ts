import type { Calculation, ReportStep, Source } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import type { EndsPerLength } from "../../units/index.js";

/** What one rule says of a yarn and a weave. */
export interface SettByRule {
  readonly rule: string;
  readonly sett: EndsPerLength;
  /** For what the rule was made; outside of it its answer means little. */
  readonly holdsFor: string;
  readonly source: Source;
  readonly status: "read" | "from memory";
  /** The formulas behind it, in their order. */
  readonly steps: readonly ReportStep<unknown>[];
}

/** A rule that says nothing of this yarn and weave, and why. */
export interface SilentRule {
  readonly rule: string;
  readonly why: string;
}

/** A formula behind a rule, with what it was called with. */
export function stepOf<I>(calculation: Calculation<I, unknown>, input: I): ReportStep<unknown> {
  return frozen({ calculation: calculation as Calculation<unknown, unknown>, input });
}

/** What a rule says, with the sett it comes to. */
export function settByRule(sett: EndsPerLength, rule: Omit<SettByRule, "sett">): SettByRule {
  return frozen({ ...rule, sett, steps: rule.steps });
}
