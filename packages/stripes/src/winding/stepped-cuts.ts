import { refuse } from "../refusal/check.js";

/** Last ends of the fewest chains of whole steps, one step apart at most; a last part step goes with the last chain. */
export function steppedCuts(ends: number, most: number, step: number): readonly number[] {
  const perChain = Math.floor(most / step);
  if (perChain === 0) {
    refuse("chains", "does-not-fit", "most", {
      expected: `at least the ${step} ends of one step`,
      received: most,
      remedy: "Allow longer chains, or cut in smaller steps.",
    });
  }
  const steps = Math.ceil(ends / step);
  const count = Math.ceil(steps / perChain);
  return Array.from({ length: count }, (_, index) => Math.min(ends, Math.floor(((index + 1) * steps) / count) * step));
}
