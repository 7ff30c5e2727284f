import type { Unary } from "../engine/formula/index.js";
import { WHOLE } from "./tolerances.js";

/** A number that turns one unit into another, or the amount that a compound unit counts in. */
export interface Constant {
  readonly kind: "length" | "mass" | "amount" | "percent";
  /** The input it belongs to; empty where it belongs to the answer. */
  readonly input: string;
  readonly says: string;
}

/** A factor of a product or a term of a sum; `turned` is divided by or taken away. */
export interface Part {
  readonly turned: boolean;
  readonly of: Hand;
  /** The line of the formula it is written in. */
  readonly line: string;
}

export type Spread = "mean" | "first" | "last" | "sum";

/** A sum as the hand works it: lines folded, products as one chain of factors, units turned by numbers that are written. */
export type Hand =
  | Leaf
  | { readonly op: "sum" | "product"; readonly parts: readonly Part[] }
  | Sigma
  | { readonly op: Exclude<Unary, "Σ"> | "square"; readonly of: Hand }
  | { readonly op: "members"; readonly of: Hand }
  | { readonly op: "step"; readonly step: number; readonly way: "round" | "floor" | "ceil"; readonly of: Hand };

export type Leaf =
  | { readonly op: "number"; readonly value: number; readonly constant?: Constant }
  | { readonly op: "name"; readonly name: string }
  | { readonly op: "spread"; readonly how: Spread; readonly name: string };

/** The sum of a list, or of all of it but one member, or of one alone. */
export interface Sigma {
  readonly op: "Σ";
  readonly of: Hand;
  readonly without?: number;
  readonly only?: number;
}

export type Amount = number | readonly number[];
export type Amounts = ReadonlyMap<string, Amount>;

const EACH = {
  "√": Math.sqrt,
  square: (x: number): number => x * x,
  roundUp: (x: number): number => Math.ceil(x - WHOLE),
  roundDown: (x: number): number => Math.floor(x + WHOLE),
  nearest: (x: number): number => Math.floor(x + 0.5 + WHOLE),
  orNothing: (x: number): number => (x < 0 ? 0 : x),
} as const;

const APPLY = {
  sum: (a: number, b: number, turned: boolean): number => (turned ? a - b : a + b),
  product: (a: number, b: number, turned: boolean): number => (turned ? a / b : a * b),
} as const;

function isOne(x: Amount): x is number {
  return typeof x === "number";
}

const added = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

const SPREAD: Readonly<Record<Spread, (list: readonly number[]) => number>> = {
  mean: (list) => added(list) / list.length,
  first: (list) => list[0] ?? Number.NaN,
  last: (list) => list.at(-1) ?? Number.NaN,
  sum: added,
};

function total(list: readonly number[], without = -1, only = -1): number {
  return added(list.filter((_, at) => at !== without && (only < 0 || at === only)));
}

function both(a: Amount, b: Amount, apply: (a: number, b: number) => number): Amount {
  if (!isOne(a)) return a.map((x, at) => apply(x, isOne(b) ? b : (b[at] ?? Number.NaN)));
  return isOne(b) ? apply(a, b) : b.map((y) => apply(a, y));
}

/** What was worked out once, for sums that share their parts. */
export type Known = Map<Hand, Amount>;

export function unary(hand: Exclude<Hand, { readonly parts: readonly Part[] } | Leaf>, inside: Amount): Amount {
  if (hand.op === "members") return isOne(inside) ? 1 : inside.length;
  if (hand.op === "Σ") return isOne(inside) ? inside : total(inside, hand.without, hand.only);
  const each = hand.op === "step" ? stepped(hand.step, hand.way) : EACH[hand.op];
  return isOne(inside) ? each(inside) : inside.map(each);
}

export function folded(op: "sum" | "product", parts: readonly Part[], amountAt: (at: number) => Amount): Amount {
  const apply = APPLY[op];
  let all: Amount = op === "sum" ? 0 : 1;
  for (let at = 0; at < parts.length; at += 1) {
    const turned = parts[at]?.turned === true;
    const own = amountAt(at);
    all = isOne(all) && isOne(own) ? apply(all, own, turned) : both(all, own, (a, b) => apply(a, b, turned));
  }
  return all;
}

/** What a sum comes to, in doubles; lists go through it member by member until Σ adds them. */
export function amountOf(hand: Hand, values: Amounts, known?: Known): Amount {
  if (hand.op === "number") return hand.value;
  if (hand.op === "name") return values.get(hand.name) ?? Number.NaN;
  if (hand.op === "spread") {
    const list = values.get(hand.name) ?? Number.NaN;
    return isOne(list) ? list : list.map(() => SPREAD[hand.how](list));
  }
  const before = known?.get(hand);
  if (before !== undefined) return before;
  if (!("parts" in hand)) return unary(hand, amountOf(hand.of, values, known));
  const { parts } = hand;
  return folded(hand.op, parts, (at) => amountOf(parts[at]?.of ?? hand, values, known));
}

function stepped(step: number, way: "round" | "floor" | "ceil"): (x: number) => number {
  const guard = way === "ceil" ? -WHOLE : WHOLE;
  return (x) => Math[way](x / step + guard) * step;
}

/** The answer of a sum; not a number where it gives none. */
export function answerOf(hand: Hand, values: Amounts, known?: Known): number {
  const amount = amountOf(hand, values, known);
  return isOne(amount) ? amount : Number.NaN;
}

export const number = (value: number, constant?: Constant): Hand => ({
  op: "number",
  value,
  ...(constant === undefined ? {} : { constant }),
});
export const name = (text: string): Hand => ({ op: "name", name: text });
export const part = (of: Hand, turned = false, line = ""): Part => ({ turned, of, line });

/** A product or sum of parts; parts of the same kind are taken in. */
export function joined(op: "sum" | "product", parts: readonly Part[]): Hand {
  if (parts.length > 1 && parts.every(({ of }) => of.op !== op)) return { op, parts };
  const flat = parts.flatMap(({ turned, of, line }): readonly Part[] =>
    of.op === op ? of.parts.map((one) => ({ ...one, turned: one.turned !== turned })) : [{ turned, of, line }],
  );
  const [only] = flat;
  return flat.length === 1 && only?.turned === false ? only.of : { op, parts: flat };
}

export const product = (...parts: readonly Part[]): Hand => joined("product", parts);
export const sum = (...parts: readonly Part[]): Hand => joined("sum", parts);
