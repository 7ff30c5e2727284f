import { QuantityError } from "@thrum/maths";
import { receivedText } from "./placed-fault.js";

/** The refusal of a thing that is not what a function takes. */
export function wrongKind(where: string, expected: string, given: unknown, remedy: string): QuantityError {
  return new QuantityError({
    code: "wrong-kind",
    function: where.replace(/\(.*$/u, ""),
    path: [],
    expected,
    received: receivedText(given),
    remedy,
  });
}
