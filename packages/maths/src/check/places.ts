import { amountOf } from "./hand.js";
import type { Amounts } from "./hand.js";
import { folded, joined, number, unary } from "./hand.js";
import type { Amount, Hand, Known, Part } from "./hand.js";

/** A sum with every part for which `change` gives another. */
export function changed(hand: Hand, change: (hand: Hand) => Hand | null): Hand {
  const own = change(hand);
  if (own !== null) return own;
  if ("parts" in hand) {
    const kept = { all: true };
    const parts = hand.parts.map((one) => {
      const of = changed(one.of, change);
      if (of === one.of) return one;
      kept.all = false;
      return { ...one, of };
    });
    return kept.all ? hand : joined(hand.op, parts);
  }
  if (!("of" in hand)) return hand;
  const of = changed(hand.of, change);
  return of === hand.of ? hand : { ...hand, of };
}

/** A place in a sum and the whole sum with something else there. */
export interface Place {
  readonly hand: Hand;
  readonly line: string;
  readonly put: (instead: Hand) => Hand;
  /** The answer with something else there that comes to so much. */
  readonly answer: (amount: Amount) => number;
}

const whole = (amount: Amount): number => (typeof amount === "number" ? amount : Number.NaN);

/** Every place of a sum, the outermost first. */
export function placesOf(
  hand: Hand,
  line: string,
  known: Known = new Map(),
  put: Place["put"] = (own) => own,
  answer: Place["answer"] = whole,
): readonly Place[] {
  const here = { hand, line, put, answer };
  if ("parts" in hand) {
    const { parts } = hand;
    const amounts = parts.map(({ of }) => known.get(of) ?? (of.op === "number" ? of.value : Number.NaN));
    const inside = parts.flatMap(({ of, line: own }, at) =>
      placesOf(
        of,
        own === "" ? line : own,
        known,
        (instead) =>
          put(
            joined(
              hand.op,
              parts.map((one, index) => (index === at ? { ...one, of: instead } : one)),
            ),
          ),
        (amount) => answer(folded(hand.op, parts, (index) => (index === at ? amount : (amounts[index] ?? Number.NaN)))),
      ),
    );
    return [here, ...inside];
  }
  if (!("of" in hand)) return [here];
  const inner = placesOf(
    hand.of,
    line,
    known,
    (instead) => put({ ...hand, of: instead }),
    (amount) => answer(unary(hand, amount)),
  );
  return [here, ...inner];
}

/** A sum with some factors of its products, wherever they stand, given others. */
export function withFactors(hand: Hand, instead: (one: Part) => readonly Part[] | null): Hand {
  if (!("parts" in hand)) return "of" in hand ? { ...hand, of: withFactors(hand.of, instead) } : hand;
  const kept = { all: true };
  const parts = hand.parts.flatMap((one) => {
    const other = hand.op === "product" ? instead(one) : null;
    const of = other === null ? withFactors(one.of, instead) : one.of;
    if (other === null && of === one.of) return [one];
    kept.all = false;
    return other?.map((made) => ({ ...made, line: one.line })) ?? [{ ...one, of }];
  });
  if (kept.all) return hand;
  return parts.length === 0 ? number(1) : joined(hand.op, parts);
}

/** Works a sum out and remembers each of its parts. */
export function remembered(hand: Hand, values: Amounts, known: Known): Known {
  if ("parts" in hand) for (const { of } of hand.parts) remembered(of, values, known);
  else if ("of" in hand) remembered(hand.of, values, known);
  return known.set(hand, amountOf(hand, values, known));
}

/** Every name a sum uses. */
export function namesOf(hand: Hand): readonly string[] {
  if (hand.op === "number") return [];
  if (hand.op === "name" || hand.op === "spread") return [hand.name];
  return "parts" in hand ? hand.parts.flatMap(({ of }) => namesOf(of)) : namesOf(hand.of);
}
