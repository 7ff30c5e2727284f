import { isCalculation, QuantityError } from "@thrum/maths";
import type { AnyCalculation, Calculation, Quantity } from "@thrum/maths";
import type { PlanData } from "@thrum/plan";
import { xlsxOf } from "./book/xlsx-of.js";
import { calculationBook } from "./calculation/calculation-book.js";
import { planBook } from "./plan/plan-book.js";

type AnyAnswer<I> = Calculation<I, Quantity<string> | number>;

/**
 * A calculation, or a whole plan, as an .xlsx workbook whose every computed cell is an ordinary built-in formula: no
 * macro, no add-in.
 *
 * @param subject any calculation of the handbook with its input, or a plan as `planWarp` makes it, or a copy of one
 * @returns the bytes of the file, always the same for the same input
 * @throws QuantityError as the calculation itself would
 * @example workbookOf(reedWidth, { ends: 368, sett: endsPerInch(20) }).length > 1000 // true
 */
export function workbookOf(plan: PlanData): Uint8Array;
export function workbookOf<I>(calculation: AnyAnswer<I>, input: NoInfer<I>): Uint8Array;
export function workbookOf(
  subject: PlanData | AnyCalculation,
  input: Readonly<Record<string, unknown>> = {},
): Uint8Array {
  if (typeof subject !== "function") return xlsxOf(planBook(subject));
  if (isCalculation(subject)) return xlsxOf(calculationBook(subject, input));
  throw new QuantityError({
    code: "wrong-kind",
    function: "workbookOf",
    path: [],
    expected: "a calculation of the handbook, or a plan",
    received: "another function",
    remedy: "Hand over the calculation itself, for example warpLength, without calling it.",
  });
}
