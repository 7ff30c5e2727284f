import { QuantityError } from "../refusal.js";
import { described } from "./described.js";

/** Refuses a quantity between + - * / < >, which would see no unit. */
export function refuseOperator(quantity: unknown): never {
  throw new QuantityError({
    code: "operator",
    function: "operator",
    path: [],
    expected: "numbers",
    received: described(quantity),
    remedy:
      "Quantities refuse + - * / < >: use sum, difference, times, ratio or compare, or read a number with .in(unit).",
  });
}
