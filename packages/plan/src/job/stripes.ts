import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form, Notation } from "./form.js";
import { handText } from "./hand-text.js";
import { handOf, numberAndRest, readHand } from "./hand.js";
import type { Hand, Runs } from "./runs.js";
import { runs } from "./runs-form.js";

/** Ends of one yarn, or of a blend; `"the rest"` fills the room that the others leave. */
export interface Stripe extends Hand {
  readonly ends: number | "the rest";
}

/** Ends must be whole hands: of every other number somebody must say which thread is left out. */
function refusePartHands({ ends, yarns, order }: Stripe): void {
  if (ends === "the rest" || ends % yarns.length === 0) return;
  const hand = handText(order === undefined ? { yarns } : { yarns, order });
  const over = ends % yarns.length;
  const fewer = ends - over;
  const write =
    fewer === 0 ? `${String(yarns.length)} ${hand}` : `${String(fewer)} ${hand}, ${String(over)} ${yarns[0] ?? ""}`;
  const remedy = `Which thread is left out of the last pass? Write ${write}.`;
  throw new Unreadable(remedy, "out-of-range", `whole hands of ${hand}`, String(ends));
}

export const stripeNotation: Notation<Stripe> = {
  read: (written) => {
    const found = numberAndRest(written);
    if (found === null)
      throw new Unreadable(
        `Write a number first, such as 24 ${/^\d/u.test(written) ? "natural" : written}. A comma parts runs.`,
      );
    const [ends, rest] = found;
    const stripe = { ends, ...readHand(rest) };
    refusePartHands(stripe);
    return stripe;
  },
  write: ({ ends, ...hand }) => `${String(ends)} ${handText(hand)}`,
};

const run: Form<Stripe> = text("ends and their yarn", "24 natural", stripeNotation);

export const stripes: Form<Runs<Stripe>> = runs<Stripe>({
  noun: "ends",
  run,
  isOpen: ({ ends }) => ends === "the rest",
  measured: ({ ends, ...hand }) => ({ size: ends === "the rest" ? 1 : ends, ...handOf(hand) }),
});
