import { QuantityError } from "@thrum/maths";
import { there } from "./state.js";
import type { State } from "./state.js";
import { Waits } from "./waits.js";

/** What a formula or a function gives; its own refusal is no answer, and any other error is one of the program. */
export function answerOf(make: (given: unknown) => unknown, given: unknown): State {
  try {
    return there(make(given));
  } catch (error) {
    if (error instanceof Waits) return { is: "waiting", needs: error.needs };
    if (!(error instanceof QuantityError)) throw error;
    return { is: "none", why: `expected ${error.expected}, received ${error.received}`, way: null };
  }
}
