import { faultText, QuantityError } from "@thrum/maths";

/**
 * Every fault with which a call is refused, as "where: what was expected", without what the declaration says the input means;
 * none where it is not refused.
 */
export function faultsOf(call: (nothing: never) => unknown, given: unknown): readonly string[] {
  try {
    call(given as never);
  } catch (error) {
    if (error instanceof QuantityError)
      return error.faults.map((fault) =>
        faultText(fault)
          .slice(0, faultText(fault).indexOf(", received "))
          .replace(": expected ", ": ")
          .replace(/ \([^()]*\)$/u, ""),
      );
    throw error;
  }
  return [];
}
