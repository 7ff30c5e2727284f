import { refuse } from "../refusal/check.js";
import { described } from "../refusal/described.js";
import type { StripeErrorCode } from "../refusal/stripe-error.js";

/** Refuses a text at one of its characters. */
export function refuseText(
  refusedBy: string,
  code: StripeErrorCode,
  expected: string,
  word: string,
  position: number,
): never {
  return refuse(refusedBy, code, ["text"], {
    expected,
    received: `${described(word)} at character ${position}`,
    remedy: "Mend the text there.",
    position,
  });
}
