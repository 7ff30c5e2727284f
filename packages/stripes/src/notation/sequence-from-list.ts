import { check, refuse } from "../refusal/check.js";
import { described } from "../refusal/described.js";
import { item } from "../sequence/item.js";
import { MOST_ENDS, refuseLength } from "../sequence/made-sequence.js";
import { sequence, type Sequence, type Stripe } from "../sequence/sequence.js";
import { stripesOfItem } from "./stripes-of-item.js";
import { aText, type Legend } from "./legend.js";
import { aNameLegend } from "./written-list.js";

export interface SequenceFromListInput<C> {
  /** `20 pink, 2 black = 22 ends`, `[6 light; 6 dark] 15 times, end 8 dark`, `48 D/L, 4 green`. */
  readonly text: string;
  readonly legend: Legend<C>;
}

export interface ListReading<C> {
  readonly sequence: Sequence<C>;
  /** Ends counted. */
  readonly total: number;
  /** Ends the list itself states after `=`; null where it states none. */
  readonly printedTotal: number | null;
  /** Printed less counted; null where nothing is printed. Other than 0, the list disagrees with itself. */
  readonly difference: number | null;
}

interface Level<C> {
  readonly stripes: Stripe<C>[];
  ends: number;
}

const NAME = "sequenceFromList";
const TOTAL = /^(\d{1,8})(?: [a-z]+){0,8}$/;
const TIMES = /^(?:[x×] ?(\d{1,7})|(\d{1,7}) ?(?:times|x|×))$/;

/**
 * The sequence of a list with the number first; brackets may stand within brackets.
 *
 * @throws StripeError, with the character, for an unknown name, a bracket left open, or an item that cannot be read
 * @example sequenceFromList({ text: "20 pink, 2 black = 22", legend: { pink: 1, black: 2 } }).difference // 0
 */
export function sequenceFromList<C>(input: SequenceFromListInput<C>): ListReading<C> {
  check(NAME, input, { text: aText, legend: aNameLegend });
  const { text, legend } = input;
  const open: Level<C>[] = [{ stripes: [], ends: 0 }];
  let closed: Level<C> | null = null;
  let printedTotal: number | null = null;
  let totalNext = false;
  for (const { 0: token, index } of text.matchAll(/[,;[\]=]|[^,;[\]=]+/g)) {
    const word = token.trim().replace(/\s+/g, " ");
    const position = index + 1 + token.length - token.trimStart().length;
    const level = item(open, open.length - 1);
    if (word === "" || printedTotal !== null) {
      if (word !== "") unreadable("nothing after the total", word, position);
    } else if (totalNext) {
      printedTotal = Number(TOTAL.exec(word)?.[1] ?? unreadable("the total", word, position));
    } else if (closed !== null) {
      const [, one, other] =
        TIMES.exec(word) ?? unreadable('a number of times after the bracket, "15 times"', word, position);
      add(level, closed, Number(one ?? other));
      closed = null;
    } else if (word === "[") open.push({ stripes: [], ends: 0 });
    else if (word === "]")
      closed = open.length > 1 ? (open.pop() ?? null) : unreadable("no closing bracket here", word, position);
    else if (word === "=") totalNext = true;
    else if (word !== "," && word !== ";") {
      const stripes = stripesOfItem(NAME, legend, word, position);
      add(level, { stripes, ends: stripes.reduce((sum, { ends }) => sum + ends, 0) }, 1);
    }
  }
  const [list] = open;
  if (list === undefined || open.length > 1 || closed !== null || (totalNext && printedTotal === null)) {
    return unreadable("every bracket closed and counted, and a total after =", "the end of the text", text.length);
  }
  const made = sequence(list.stripes);
  return {
    sequence: made,
    total: made.ends,
    printedTotal,
    difference: printedTotal === null ? null : printedTotal - made.ends,
  };
}

function add<C>(level: Level<C>, group: Level<C>, times: number): void {
  level.ends += group.ends * times;
  if (level.ends > MOST_ENDS) refuseLength(NAME, level.ends);
  for (let time = 0; time < times && group.ends > 0; time++)
    for (const stripe of group.stripes) level.stripes.push(stripe);
}

function unreadable(expected: string, received: string, position: number): never {
  return refuse(NAME, "unreadable", "text", {
    expected,
    received: described(received),
    remedy: "Mend the text there.",
    position,
  });
}
