import { namesOf } from "./places.js";
import { decimalText } from "../engine/numbers.js";
import type { Read } from "../engine/formula/index.js";
import { inWords } from "../engine/working/index.js";
import type { Worked } from "./hand-of.js";
import type { Amounts, Hand, Known, Part } from "./hand.js";
import type { Place } from "./places.js";

/** The families of wrong sums with their weights: shares of wrong answers, normalised over those a formula offers. */
export const FAMILIES = {
  trade: 0.08,
  percentage: 0.2,
  percentages: 0.08,
  base: 0.05,
  factor: 0.16,
  constant: 0.12,
  unit: 0.05,
  term: 0.1,
  reach: 0.07,
  name: 0.05,
  count: 0.04,
  list: 0.07,
  power: 0.03,
  rounding: 0.04,
  line: 0.05,
  early: 0.04,
  copied: 0.07,
  answer: 0.02,
} as const;

export type Family = keyof typeof FAMILIES;

/** A sum that goes wrong in one way. */
export interface Reason {
  readonly family: Family;
  /** What is done, without its numbers: the same for other inputs. */
  readonly key: string;
  readonly line: string;
  /** "adds the 10 % of take-up instead of dividing it out" */
  readonly says: () => string;
  /** The sum, or what stands at `place` of the right one instead. */
  readonly hand: Hand;
  readonly place?: Place;
  /** What an input was taken for, made from its own number. */
  readonly taken?: (values: Amounts) => Amounts;
  /** Its part of its family; all reasons of a family share alike where none is said. */
  readonly share?: number;
}

/** What the operators look at. */
export interface Scene extends Worked {
  /** Every part of the right sum, worked out. */
  readonly known: Known;
  readonly places: readonly Place[];
  readonly inputs: ReadonlyMap<string, Read>;
  readonly percents: ReadonlySet<string>;
}

/** An input's name in words, a percentage with its number. */
export function called({ inputs, percents }: Scene, name: string): string {
  const read = inputs.get(name);
  const words = inWords(name.replace(/\.(?:length|mass)$/u, ""));
  return percents.has(name) && read?.what === "quantity" ? `the ${decimalText(read.value)} % of ${words}` : words;
}

/** A part of a sum in words. */
export function worded(scene: Scene, hand: Hand): string {
  if (hand.op === "number") {
    const { constant, value } = hand;
    const text = value.toString();
    if (constant === undefined) return text.length > 6 ? value.toPrecision(3) : text;
    return constant.kind === "amount" ? `the ${text} of ${constant.says}` : `the ${text} ${constant.says}`;
  }
  const names = [...new Set(namesOf(hand))].map((one) => called(scene, one));
  const [one = ""] = names;
  const list = names.length < 3 ? names.join(" and ") : `${names.slice(0, -1).join(", ")} and ${String(names.at(-1))}`;
  if (hand.op === "√") return `the square root of ${list}`;
  if (hand.op === "sum" && names.length > 1) {
    const isPlain = hand.parts.every(({ of }) => of.op === "name");
    return `${isPlain && hand.parts.some(({ turned }) => turned) ? "the difference" : "the sum"} of ${list}`;
  }
  return names.length === 1 ? one : list;
}

/** A percentage as a factor: 1 + p, 1 − p, or one with several in it. */
export function percentIn({ percents }: Scene, hand: Hand): readonly Part[] | null {
  if (hand.op !== "sum") return null;
  const [head, ...rest] = hand.parts;
  if (head?.of.op !== "number" || head.of.value !== 1 || head.turned || rest.length === 0) return null;
  return rest.every(({ of }) => of.op === "name" && percents.has(of.name)) ? rest : null;
}

/** The whole sum of a reason. */
export function handIn({ hand, place }: Reason): Hand {
  return place === undefined ? hand : place.put(hand);
}
