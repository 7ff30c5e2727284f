import { makeQuantity } from "../quantity/index.js";
import type { Calculation, Declaration, Declared } from "./declaration.js";
import { parseLines } from "./parse.js";
import { run } from "./run.js";

/** Makes a formula one can call from its declaration, which is read on first use. */
export function calculation<I, R>(declare: () => Declaration<NoInfer<I>, NoInfer<R>>): Calculation<I, R> {
  let declared: Declared | null = null;
  const read = (): Declared => {
    if (declared !== null) return declared;
    const { resultIn = null, slips = [], atLeast = {}, ...declaration } = declare();
    declared = Object.freeze({ ...declaration, resultIn, slips, atLeast, lines: parseLines(declaration.formula) });
    return declared;
  };
  const answer = (input: I): R => {
    const { value, unit } = run(read(), input);
    return (unit === null ? value.toNumber() : makeQuantity(unit, value)) as R;
  };
  Object.defineProperty(answer, "declaration", { get: read, enumerable: true });
  return answer as Calculation<I, R>;
}
