import { check, refuse } from "../refusal/check.js";
import { oneOf } from "../refusal/kinds.js";
import type { Pivots } from "../sequence/full-sett.js";
import { fullSettOf } from "../sequence/full-sett-of.js";
import { madeSequence, stripe } from "../sequence/made-sequence.js";
import type { Sequence } from "../sequence/sequence.js";
import { aNotation, colourNamed, type Legend } from "./legend.js";
import { aLetterLegend } from "./thread-count.js";
import { refuseText } from "./refuse-text.js";

export interface SettFromThreadCountInput<C> {
  /** Letters and counts: `K/4 R24 K24 Y/4`, `/K4 R24 Y4/`, `[K/4] R24 [Y/4]`, `K2* R24 Y2*`, `... K4 R24 ...`; spaces may be left out. */
  readonly text: string;
  readonly legend: Legend<C>;
  /** The same marks mean different things in different books: say which is meant. */
  readonly pivots: Pivots;
}

export interface Sett<C> {
  /** As written. */
  readonly sett: Sequence<C>;
  /** One whole repeat. */
  readonly fullSett: Sequence<C>;
}

const NAME = "settFromThreadCount";
/** Dots, a count with another letter close behind it (`K4R24`), or all up to the next space. */
const WORD = /\.{3}|…|[[/]?[A-Za-z]+\/?\d+[*/\]]?(?=[[/]?[A-Za-z])|(?:(?!\.{3})[^\s,…])+/g;
const STRIPE = /^[[/]?([A-Za-z]{1,3})\/?(0*[1-9]\d{0,6})[*/\]]?$/;
/** How the first word and the last are marked, each letter and count written K4, and the pivots that can mean. */
const MARKS: Readonly<Record<string, readonly Pivots[]>> = {
  "K4 K4": ["full count", "half count", "repeating"],
  "K/4 K/4": ["full count", "half count"],
  "[K/4] [K/4]": ["full count", "half count"],
  "/K4 K4/": ["full count", "half count"],
  "K4* K4*": ["half count"],
  "... ...": ["repeating"],
};

/**
 * A pattern sett read from letters and counts, as written and in full.
 *
 * @throws StripeError, with the character, for an unknown letter, a mark out of place, or marks against the pivots stated
 * @example
 * const legend = { K: "black", R: "red", Y: "yellow" };
 * settFromThreadCount({ text: "K/4 R24 K24 Y/4", legend, pivots: "full count" }).fullSett.ends // 104
 */
export function settFromThreadCount<C>(input: SettFromThreadCountInput<C>): Sett<C> {
  check(NAME, input, {
    text: aNotation,
    legend: aLetterLegend,
    pivots: oneOf("full count", "half count", "repeating"),
  });
  const { text, legend, pivots } = input;
  const words = [...text.matchAll(WORD)].map(({ 0: found, index }) => {
    const word = found === "…" ? "..." : found;
    return { word, position: index + 1, marked: word.replace(/[A-Za-z]+/, "K").replace(/\d+/, "4") };
  });
  const marks = `${words[0]?.marked} ${words.at(-1)?.marked}`;
  const counts = marks === "... ..." ? words.slice(1, -1) : words;
  const stripes = counts.map(({ word, position, marked }, index) => {
    const [, letter, ends] = STRIPE.exec(word) ?? [];
    const outer = counts === words && (index === 0 || index === words.length - 1);
    if (letter === undefined || !(outer || marked === "K4")) {
      return refuseText(
        NAME,
        "unreadable",
        "letters and a count, such as K24, with marks only at the pivots",
        word,
        position,
      );
    }
    return stripe(colourNamed(NAME, legend, letter, position), Number(ends));
  });
  if (MARKS[marks]?.includes(pivots) !== true) {
    refuse(NAME, "unreadable", ["pivots"], {
      expected: MARKS[marks]?.join(" or ") ?? "both pivots marked alike, or neither",
      received: pivots,
      remedy: "Look up which the book means.",
    });
  }
  const sett = madeSequence(NAME, stripes);
  return { sett, fullSett: fullSettOf(NAME, sett, pivots) };
}
