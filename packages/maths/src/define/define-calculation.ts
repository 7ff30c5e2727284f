import { calculation } from "../engine/formula/index.js";
import type { Calculation } from "../engine/formula/index.js";
import type { Declaration } from "../engine/formula/declaration.js";
import { QuantityError } from "../engine/refusal.js";
import { declarationFaults } from "./declaration-faults.js";

/**
 * A calculation of one's own, with all the uses of ours: `explain`, `check`, `attempt`, `solveFor`, `spreadsheetFormula`,
 * `forColumns`, `inputEntries`. It is held to what ours are held to: every input is used, every name is known, and the
 * dimensions of each line balance.
 *
 * @param declaration its name, inputs, formula, result and source, as a file of our handbook has them
 * @throws QuantityError with every fault of the declaration
 * @example const bobbins = defineCalculation({
 *   name: "bobbins",
 *   inputs: { yarn: positive(Length, "in all"), onBobbin: positive(Length, "on one bobbin") },
 *   formula: "bobbins = roundUp(yarn ÷ onBobbin)",
 *   result: whole("bobbins", "to wind", { atLeast: 1 }),
 *   source: { key: "own", author: "the weaver", title: "notebook", year: "2026", place: "p. 3" },
 * });
 * bobbins({ yarn: yards(100), onBobbin: yards(30) }) // 4
 */
export function defineCalculation<I extends object, R>(declaration: Declaration<I, R>): Calculation<I, R> {
  const [first, ...others] = declarationFaults(declaration);
  if (first !== undefined) throw new QuantityError(first, ...others);
  const own = Object.freeze({ ...declaration });
  return calculation<I, R>(() => own);
}
