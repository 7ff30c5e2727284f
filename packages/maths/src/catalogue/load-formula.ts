import { isCalculation } from "../engine/formula/index.js";
import type { AnyCalculation } from "../engine/formula/index.js";
import { described } from "../engine/quantity/index.js";
import { missingOr, QuantityError } from "../engine/refusal.js";
import { formulaEntries } from "./formula-entry.js";

/**
 * A calculation by its name; the handbook is loaded when the first one is asked for.
 *
 * @param name of an entry that is a calculation
 * @throws QuantityError "unknown-word" for a name of none, a report function's among them
 * @example typeof loadFormula("reedWidth").then // "function"
 */
export async function loadFormula(name: string): Promise<AnyCalculation> {
  const handbook: Readonly<Record<string, unknown>> = await import("../index.js");
  const found = Object.hasOwn(handbook, name) ? handbook[name] : undefined;
  if (isCalculation(found)) return found;
  const candidates = formulaEntries.filter(({ what }) => what === "calculation").map((entry) => entry.name);
  throw new QuantityError({
    code: missingOr(name, "unknown-word"),
    function: "loadFormula",
    path: ["name"],
    expected: "the name of a calculation",
    received: described(name),
    remedy: "Take it from formulaEntries.",
    params: { candidates },
  });
}
