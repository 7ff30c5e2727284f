import { check, refuse } from "../refusal/check.js";
import { described } from "../refusal/described.js";
import { oneOf } from "../refusal/kinds.js";
import { fullSett, type Pivots } from "../sequence/full-sett.js";
import { item } from "../sequence/item.js";
import { sequence, type Sequence } from "../sequence/sequence.js";
import { aText, colourNamed, type Legend } from "./legend.js";
import { aLetterLegend } from "./thread-count.js";

export interface SettFromThreadCountInput<C> {
  /** Letters and counts: `K/4 R24 K24 Y/4`, `/K4 R24 Y4/`, `[K/4] R24 [Y/4]`, `K2* R24 Y2*`, `... K4 R24 ...`. */
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
const STRIPE = /^([[/]{0,2})([A-Za-z]{1,3})(\/?)(\d{1,7})([*/\]]{0,2})$/;
/** Marks before, within and after a pivot, and the pivots they can mean; at the far pivot an outer stroke is mirrored. */
const MARKS: Readonly<Record<string, readonly Pivots[]>> = {
  "": ["full count", "half count", "repeating"],
  "·/·": ["full count", "half count"],
  "[·/·]": ["full count", "half count"],
  "··*": ["half count"],
  "/··": ["full count", "half count"],
  "...": ["repeating"],
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
  check(NAME, input, { text: aText, legend: aLetterLegend, pivots: oneOf("full count", "half count", "repeating") });
  const { text, legend, pivots } = input;
  const words = [
    ...text
      .replaceAll("…", "...")
      .replaceAll("...", " ... ")
      .matchAll(/[^\s,]+/g),
  ].map(([word]) => word);
  const dotted = words[0] === "..." && words.at(-1) === "..." && words.length > 2;
  const counts = dotted ? words.slice(1, -1) : words;
  let from = 0;
  const marks: string[] = [];
  const stripes = counts.map((word, index) => {
    from = text.indexOf(word, from) + word.length;
    const position = from - word.length + 1;
    const [, before, letter = "", within, ends, after] = STRIPE.exec(word) ?? unreadable(word, position);
    const mark = `${before ?? ""}·${within ?? ""}·${after ?? ""}`;
    if (mark !== "··") {
      if (index > 0 && index < counts.length - 1) unreadable(word, position);
      marks.push(index > 0 && mark === "··/" ? "/··" : mark);
    }
    return { colour: colourNamed(NAME, legend, letter, position), ends: Number(ends) };
  });
  const alike = marks.length === Math.min(2, counts.length) && new Set(marks).size === 1;
  const kind = dotted ? "..." : alike ? item(marks, 0) : marks.join("");
  const meant = (dotted && marks.length > 0) || (!alike && marks.length > 0) ? undefined : MARKS[kind];
  if (meant?.includes(pivots) !== true) {
    refuse(NAME, "unreadable", "pivots", {
      expected: meant?.join(" or ") ?? "both pivots marked alike, or neither",
      received: pivots,
      remedy: "The marks and the pivots stated must agree: look up which the book means.",
    });
  }
  const sett = sequence(stripes);
  return { sett, fullSett: fullSett({ sett, pivots }) };
}

function unreadable(word: string, position: number): never {
  return refuse(NAME, "unreadable", "text", {
    expected: "letters and a count, such as K24, with marks only at the pivots",
    received: described(word),
    remedy: "Mend the text there.",
    position,
  });
}
