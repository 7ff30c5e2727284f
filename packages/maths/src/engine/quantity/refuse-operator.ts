import { refuse } from "../refusal.js";
import { described } from "./described.js";

/** Refuses a quantity between + - * / < >, which would see no unit. */
export function refuseOperator(quantity: unknown): never {
  refuse(
    "operator",
    ["operator"],
    "numbers",
    described(quantity),
    "Quantities refuse + - * / < >: use sum, difference, times, ratio or compare, or read a number with .in(unit).",
  );
}
