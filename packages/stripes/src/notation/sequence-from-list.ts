import { check } from "../refusal/check.js";
import { item } from "../sequence/item.js";
import { madeSequence } from "../sequence/made-sequence.js";
import type { Sequence } from "../sequence/sequence.js";
import { type Named, stripesOfItem } from "./stripes-of-item.js";
import { aNotation, colourNamed, type Legend } from "./legend.js";
import { refuseText } from "./refuse-text.js";
import { aNameLegend, isName } from "./written-list.js";
import { addTimes, type WrittenOrder } from "./written-order.js";

export interface SequenceFromListInput<C> {
  /** `20 pink, 2 black = 22 ends`, `[6 light; 6 dark] 15 times, end 8 dark`, `48 D/L, 4 green`; or an item a line. */
  readonly text: string;
  readonly legend: Legend<C>;
}

/** A list whose names are the colours themselves. */
export type SequenceFromNamesInput = Omit<SequenceFromListInput<string>, "legend">;

export interface ListReading<C> {
  readonly sequence: Sequence<C>;
  /** Ends counted. */
  readonly total: number;
  /** Ends the list itself states after `=`; null where it states none. */
  readonly printedTotal: number | null;
  /** Printed less counted; null where nothing is printed. Other than 0, the list disagrees with itself. */
  readonly difference: number | null;
}

const NAME = "sequenceFromList";
/** A bracket opened; one closed, with its number of times; the total; an item. Commas, semicolons and lines part them. */
const PART = /\[|\][^,;[\]=\n\r]*|=[^]*|[^,;[\]=\n\r]+/g;
const TIMES = /^\] ?(?:[x×] ?(\d{1,7})|(\d{1,7}) ?(?:times|x|×))$/;
const TOTAL = /^= ?(\d{1,8})(?: [a-z]+){0,8}$/;

/**
 * The sequence of a list with the number first; brackets may stand within brackets. Without a legend the names are the
 * colours.
 *
 * @throws StripeError, with the character, for an unknown name, a bracket left open, or an item that cannot be read
 * @example sequenceFromList({ text: "20 pink, 2 black = 22", legend: { pink: 1, black: 2 } }).difference // 0
 */
export function sequenceFromList(input: SequenceFromNamesInput): ListReading<string>;
export function sequenceFromList<C>(input: SequenceFromListInput<C>): ListReading<C>;
export function sequenceFromList<C>(
  input: SequenceFromListInput<C> | SequenceFromNamesInput,
): ListReading<C> | ListReading<string> {
  if (isWithLegend(input)) {
    check(NAME, input, { text: aNotation, legend: aNameLegend });
    const { text, legend } = input;
    return listReading(text, (name, position) => colourNamed(NAME, legend, name, position));
  }
  check(NAME, input, { text: aNotation });
  return listReading(input.text, (name, position) =>
    isName(name)
      ? name
      : refuseText(NAME, "unreadable", "a name of at most 40 characters that begins with no figure", name, position),
  );
}

function isWithLegend<C>(input: SequenceFromListInput<C> | SequenceFromNamesInput): input is SequenceFromListInput<C> {
  const given: unknown = input;
  return typeof given === "object" && given !== null && "legend" in given;
}

function listReading<C>(text: string, named: Named<C>): ListReading<C> {
  const list: WrittenOrder<C> = { stripes: [], ends: 0 };
  const open = [list];
  let printedTotal: number | null = null;
  for (const { 0: part, index } of text.matchAll(PART)) {
    const word = part.trim().replace(/\s+/g, " ");
    const position = index + 1 + part.length - part.trimStart().length;
    const level = item(open, open.length - 1);
    if (word === "[") open.push({ stripes: [], ends: 0 });
    else if (word.startsWith("]")) {
      const [, one, other] = TIMES.exec(word) ?? [];
      const times = Number(one ?? other);
      open.pop();
      const around = open.at(-1);
      if (around === undefined || level.ends === 0 || !(times > 0)) {
        return refuseText(
          NAME,
          "unreadable",
          'a number of times after a bracket with ends in it, "] 15 times"',
          word,
          position,
        );
      }
      addTimes(NAME, around, level.stripes, times);
    } else if (word.startsWith("=")) {
      printedTotal = Number(
        TOTAL.exec(word)?.[1] ?? refuseText(NAME, "unreadable", "a total and no more", word, position),
      );
    } else if (word !== "") {
      addTimes(NAME, level, stripesOfItem(NAME, named, word, position), 1);
    }
  }
  if (open.length > 1 || list.ends === 0) {
    refuseText(NAME, "unreadable", "stripes, and every bracket closed", "the end of the text", text.length);
  }
  const sequence = madeSequence(NAME, list.stripes);
  const total = sequence.ends;
  return { sequence, total, printedTotal, difference: printedTotal === null ? null : printedTotal - total };
}
