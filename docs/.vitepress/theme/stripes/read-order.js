// An order of stripes as people write it, read without guessing: what could be two things is asked about.
import { stripeOf, tell, tokensOf } from "./marks.js";

/** More text than any order needs; a link may bring more. */
export const MOST_CHARACTERS = 4000;
/** Every end is drawn: more would hold the page up. */
export const MOST_ENDS = 5000;
const DEEPEST = 8;

const TIMES_BEFORE = /^(\d{1,4}) ?(?:x|×|\*|times|repeats? of)$/iu;
const TIMES_AFTER =
  /^(?:(?:x|×|\*) ?(\d{1,4})|(\d{1,4}) ?(?:x|×|\*|times|repeats)|(?:repeat|repeated) (\d{1,4})(?: times)?)$/iu;
const MIRROR = /^mirror(?:ed)?(?:,? ?(?:middle )?(once|twice))?(?: of)?$/iu;
const endsIn = (list) =>
  list.reduce((sum, one) => {
    if (one.of !== undefined) return sum + one.repeat * endsIn(one.of);
    if (one.mirror === undefined) return sum + one.ends;
    const last = one.middle === "once" ? endsIn([one.mirror.at(-1)]) : 0;
    return sum + 2 * endsIn(one.mirror) - last;
  }, 0);

/**
 * The order as a list of stripes, repeats and mirrors, and the total it states itself.
 *
 * @param {string} text
 * @returns {{ list: readonly object[], total: number, printed: number | null }}
 */
export function readOrder(text) {
  if (text.trim() === "") tell("Write the order here: a number and a colour, such as 24 natural, 40 indigo.");
  if (text.length > MOST_CHARACTERS) tell(`An order of more than ${MOST_CHARACTERS} characters is not read.`);
  const tokens = tokensOf(text.trim());
  let at = 0;
  let printed = null;

  function listAt(depth) {
    if (depth > DEEPEST) tell(`Brackets within brackets go ${DEEPEST} deep; write some of it out.`);
    const list = [];
    let parted = true;
    for (; at < tokens.length && tokens[at].kind !== "close";) {
      const { kind, said } = tokens[at];
      if (kind === "comma") {
        parted = true;
        at += 1;
        continue;
      }
      if (kind === "total") {
        const total = /^= ?(\d{1,6})(?: ends?)?$/iu.exec(said)?.[1];
        if (total === undefined || depth > 0) tell(`“${said}”: a total stands at the end, such as = 208 ends.`);
        printed = Number(total);
        at += 1;
        continue;
      }
      const next = tokens[at + 1]?.kind;
      const times = kind === "words" && next === "open" ? TIMES_BEFORE.exec(said)?.[1] : undefined;
      const mirrored = kind === "words" && next === "open" ? MIRROR.exec(said) : null;
      if (kind === "words" && times === undefined && mirrored === null) {
        if (next === "open") tell(`“${said}” before a bracket: write 3 times, or mirror, or a comma.`);
        if (!parted) tell(`Is a comma missing before “${said}”?`);
        list.push(stripeOf(said));
        at += 1;
        parted = false;
        continue;
      }
      if (!parted) tell(`Is a comma missing before ${kind === "open" ? "a bracket" : `“${said}”`}?`);
      at += kind === "open" ? 1 : 2;
      const of = listAt(depth + 1);
      if (tokens[at]?.kind !== "close") tell("A bracket is opened and not closed.");
      at += 1;
      if (of.length === 0) tell("Nothing stands in a pair of brackets.");
      list.push(grouped(of, times, mirrored));
      parted = false;
    }
    return list;
  }

  /** What a bracket means, told before it or after it. */
  function grouped(of, before, mirroredBefore) {
    const said = tokens[at]?.kind === "words" ? tokens[at].said : "";
    const [, ...after] = TIMES_AFTER.exec(said) ?? [];
    const times = before ?? after.find((one) => one !== undefined);
    const mirrored = mirroredBefore ?? MIRROR.exec(said);
    if (said !== "" && (after.length > 0 || (mirroredBefore === null && mirrored !== null))) at += 1;
    if (mirrored !== null) {
      const middle = (mirrored[1] ?? middleSaid())?.toLowerCase();
      if (middle === undefined) {
        tell(
          "Does the last stripe of the mirror stand once in the middle, or twice? Write mirror once […] or mirror twice […].",
        );
      }
      return { mirror: of, middle };
    }
    if (times === undefined) tell("How often does the bracket stand? Write [ … ] 3 times.");
    if (Number(times) === 0) tell("A bracket stands at least 1 time.");
    return { repeat: Number(times), of };
  }

  /** `mirror […] middle twice` */
  function middleSaid() {
    const found = tokens[at]?.kind === "words" ? /^(?:middle )?(once|twice)$/iu.exec(tokens[at].said) : null;
    if (found !== null) at += 1;
    return found?.[1];
  }

  const list = listAt(0);
  if (at < tokens.length) tell("A bracket is closed that was not opened.");
  if (list.length === 0) tell("Write a number and a colour, such as 24 natural.");
  const total = endsIn(list);
  if (total > MOST_ENDS) tell(`This page draws at most ${MOST_ENDS} ends; these are ${total}.`);
  return { list, total, printed };
}
