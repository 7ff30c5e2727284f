import { StripeError } from "@thrum/stripes";

/** The error with which a call is refused; a call that is not refused, or fails in another way, fails the test. */
export function refusalOf(call: () => unknown): StripeError {
  try {
    call();
  } catch (error) {
    if (error instanceof StripeError) return error;
    throw error;
  }
  throw new Error("expected a refusal");
}
