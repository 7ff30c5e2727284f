import { Decimal } from "../numbers.js";
import type { Step } from "../formula/index.js";
import { inWords } from "../working/index.js";

interface Tied {
  readonly number: Decimal;
  readonly steps: readonly Step[];
}

/** The further digit that would tell slips apart, or the line of the working to ask for. */
export function tellApart(tied: readonly Tied[], decimals: number, right: readonly Step[]): string | null {
  const [first, second] = tied;
  if (first === undefined || second === undefined) return null;
  for (let more = 1; more <= 3; more += 1) {
    const [a, b] = [first, second].map(({ number }) => number.toFixed(decimals + more, Decimal.ROUND_HALF_UP));
    if (a !== b) return `to ${String(decimals + more)} decimals they would differ: ${String(a)} and ${String(b)}`;
  }
  const at = right.find(({ name }) => {
    const [a, b] = [first, second].map(({ steps }) => steps.find((step) => step.name === name)?.value);
    return a instanceof Decimal && b instanceof Decimal && !a.eq(b);
  });
  return at === undefined ? "the two are the same sum" : `ask for ${inWords(at.name)}: there the two differ`;
}
