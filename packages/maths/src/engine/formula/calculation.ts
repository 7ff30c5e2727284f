import { frozen } from "../frozen.js";
import { described, makeQuantity } from "../quantity/index.js";
import { refuse } from "../refusal.js";
import type { AnyCalculation, Calculation, Declaration, Declared } from "./declaration.js";
import { parseLines } from "./parse.js";
import { run } from "./run.js";

/** The declaration of a calculation, or the refusal of what is none. */
export function declarationOf(caller: string, calculation: unknown): Declared {
  const declared =
    typeof calculation === "function" ? (calculation as Partial<Calculation<never, never>>).declaration : undefined;
  if (declared !== undefined) return declared;
  refuse(
    "wrong-kind",
    [caller, "calculation"],
    "a calculation of the handbook",
    described(calculation),
    "Hand over the calculation itself, for example warpLength, without calling it.",
  );
}

/**
 * Whether this is a calculation of the handbook, or one that `solveFor` made.
 *
 * @param candidate anything
 * @example isCalculation(42) // false
 */
export function isCalculation<T>(candidate: T): candidate is AnyCalculation & T {
  return typeof candidate === "function" && Object.hasOwn(candidate, "declaration");
}

/** Makes a formula one can call from its declaration, which is read on first use. */
export function calculation<I, R>(declare: () => Declaration<NoInfer<I>, NoInfer<R>>): Calculation<I, R> {
  let declared: Declared | null = null;
  const read = (): Declared => {
    if (declared !== null) return declared;
    const { resultIn = null, toldIn = null, forUse = null, slips = [], atLeast = {}, ...declaration } = declare();
    // A program that changed a declaration would change every later answer.
    declared = frozen({
      ...declaration,
      resultIn,
      toldIn,
      forUse,
      slips,
      atLeast,
      lines: parseLines(declaration.formula),
    });
    return declared;
  };
  const answer = (input: I): R => {
    const { value, unit } = run(read(), input);
    return (unit === null ? value.toNumber() : makeQuantity(unit, value)) as R;
  };
  Object.defineProperty(answer, "declaration", { get: read, enumerable: true });
  return answer as Calculation<I, R>;
}
