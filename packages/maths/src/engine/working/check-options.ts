import { described, onlyOptions } from "../quantity/index.js";
import { inPlace, QuantityError } from "../refusal.js";
import type { ExplainOptions } from "./working.js";

const MOST_DIGITS = 30;

/** Refuses an option that is none, and figures that no number has. */
export function checkOptions(options: ExplainOptions): void {
  onlyOptions("explain", ["unit", "digits"], options);
  const { digits = 1 } = options;
  if (Number.isInteger(digits) && digits >= 1 && digits <= MOST_DIGITS) return;
  throw new QuantityError({
    code: "out-of-range",
    ...inPlace(["explain", "digits"]),
    expected: `a whole number from 1 to ${String(MOST_DIGITS)}`,
    received: described(digits),
    remedy: "Leave it out for six figures.",
    params: { kind: "whole", atLeast: 1, atMost: MOST_DIGITS },
  });
}
