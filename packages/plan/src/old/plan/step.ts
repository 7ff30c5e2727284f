import { explain } from "@thrum/maths";
import { frozen } from "../job/frozen.js";
import type { Calculation, Working } from "@thrum/maths";

/** A number of the plan that opens into its working. */
export interface PlanStep {
  readonly calculation: Calculation<never, unknown>;
  readonly input: unknown;
  /** The working, made when it is asked for. */
  explain(): Working;
}

/** The calculation behind a number, kept with its input. */
export function step<I>(calculation: Calculation<I, unknown>, input: NoInfer<I>): PlanStep {
  return frozen({ calculation, input, explain: () => explain(calculation, input) });
}
