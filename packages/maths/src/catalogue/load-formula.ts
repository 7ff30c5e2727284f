import { isCalculation } from "../engine/formula/index.js";
import type { AnyCalculation } from "../engine/formula/index.js";
import { described } from "../engine/quantity/index.js";
import { missingOr, refuse } from "../engine/refusal.js";
import { LOADERS } from "./loaders.js";

/**
 * A calculation by its name; its file, and no other of the handbook, is loaded when it is asked for.
 *
 * @param name of an entry that is a calculation
 * @throws QuantityError "unknown-word" for a name of none, a report function's among them
 * @example typeof loadFormula("reedWidth").then // "function"
 */
export async function loadFormula(name: string): Promise<AnyCalculation> {
  const load = Object.hasOwn(LOADERS, name) ? LOADERS[name] : undefined;
  const found = (await load?.())?.[name];
  if (isCalculation(found)) return found;
  refuse(
    missingOr(name, "unknown-word"),
    ["loadFormula", "name"],
    "the name of a calculation",
    described(name),
    "Take it from formulaEntries.",
    { candidates: Object.keys(LOADERS) },
  );
}
