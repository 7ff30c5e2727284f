// An order of stripes as people write it, read without guessing: what could be two things is asked about.

/** More text than any order needs; a link may bring more. */
export const MOST_CHARACTERS = 4000;
/** Every end is drawn: more would hold the page up. */
export const MOST_ENDS = 5000;
const DEEPEST = 8;

/** Why an order was not read, in words for its writer. */
export class Unwritten extends Error {}

const tell = (says) => {
  throw new Unwritten(says);
};

const TOKEN = /[ \t\r]*(?:([,;\n]+)|([[(])|([\])])|(=[^,;\n]*)|([^,;\n[\](){}=]+))/gu;

/** The marks of an order: separators, brackets, a total, and words between them. */
function tokensOf(text) {
  const kinds = ["comma", "open", "close", "total", "words"];
  const tokens = [];
  // A break of the line parts stripes as a comma does.
  for (const [, ...parts] of text.replace(/[ \t]+/gu, " ").matchAll(TOKEN)) {
    const at = parts.findIndex((part) => part !== undefined);
    const said = parts[at].trim();
    if (said === "" && kinds[at] !== "comma") continue;
    tokens.push({ kind: kinds[at], said });
  }
  return tokens;
}

const TIMES_BEFORE = /^(\d{1,4}) ?(?:x|×|\*|times|repeats? of)$/iu;
const TIMES_AFTER =
  /^(?:(?:x|×|\*) ?(\d{1,4})|(\d{1,4}) ?(?:x|×|\*|times|repeats)|(?:repeat|repeated) (\d{1,4})(?: times)?)$/iu;
const MIRROR = /^mirror(?:ed)?(?:,? ?(?:middle )?(once|twice))?(?: of)?$/iu;
const IN_NAME = /\b(?:times|repeats?|repeated|mirror(?:ed)?|x)\b|[×*]/iu;

/** One stripe: a number and a colour, in either order; two colours wound together are joined by +. */
function stripeOf(said) {
  const [, before, behind] = /^(?:(?:end|then) )?(\d{1,5}) ?(\D.*)$/iu.exec(said) ?? [];
  const [, ahead, after] = /^(\D*?) ?(\d{1,5})$/u.exec(said) ?? [];
  const ends = Number(before ?? after);
  const name = (behind ?? ahead ?? "").trim().replace(/^ends?(?: of)? /iu, "");
  if (name === "" && after !== undefined) tell(`${after} of which colour? Write ${after} natural.`);
  if (name === "") tell(`How many ends of “${said}”? Write a number and a colour, such as 24 natural.`);
  const digits = /\d+/u.exec(name)?.[0];
  if (digits !== undefined) tell(`“${said}”: is a comma missing before ${digits}?`);
  if (IN_NAME.test(name)) {
    tell(`“${said}”: put what is repeated in brackets, such as [12 madder, 6 natural] 3 times.`);
  }
  if (ends === 0) tell(`“${said}”: a stripe has one end or more.`);
  const yarns = name.split("+").map((one) => one.trim());
  if (yarns.includes("")) tell(`“${said}”: write both colours, such as 16 plum + pink.`);
  if (ends % yarns.length !== 0) {
    tell(
      `“${said}”: ${ends} ends are no whole number of ${yarns.join(" + ")}. Write ${ends - (ends % yarns.length)} or ${ends + yarns.length - (ends % yarns.length)}.`,
    );
  }
  return { ends, yarns };
}

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

/**
 * Every stripe in its place, blends end by end.
 *
 * @param {readonly object[]} list
 * @returns {{ colour: string, ends: number }[]}
 */
export function runsOf(list) {
  return list.flatMap((one) => {
    if (one.of !== undefined) return Array.from({ length: one.repeat }, () => runsOf(one.of)).flat();
    if (one.mirror !== undefined) {
      const there = one.mirror.map((part) => runsOf([part]));
      const back = there.map((runs) => runs.toReversed()).toReversed();
      return [...there.flat(), ...(one.middle === "once" ? back.slice(1) : back).flat()];
    }
    if (one.yarns.length === 1) return [{ colour: one.yarns[0], ends: one.ends }];
    return Array.from({ length: one.ends }, (_, end) => ({ colour: one.yarns[end % one.yarns.length], ends: 1 }));
  });
}

/** The colours, in the order they appear. */
export const coloursOf = (list) => [...new Set(runsOf(list).map(({ colour }) => colour))];

/**
 * The order as a job file writes it.
 *
 * @param {readonly object[]} list
 * @returns {string}
 */
export function asJob(list) {
  const flow = (one) => {
    if (one.of !== undefined) return `{ repeat: ${one.repeat}, of: [${one.of.map(flow).join(", ")}] }`;
    if (one.mirror !== undefined) return `{ mirror: [${one.mirror.map(flow).join(", ")}], middle: ${one.middle} }`;
    return `${one.ends} ${one.yarns.join(" + ")}`;
  };
  return `stripes:\n${list.map((one) => `  - ${flow(one)}\n`).join("")}`;
}

/** The order a link asks for; null where it asks for none. */
export function orderIn(query) {
  return new URLSearchParams(query).get("order")?.slice(0, MOST_CHARACTERS + 1) ?? null;
}

/** A job file as the part of an address that the app reads: deflated, in letters that an address may hold. */
export async function linkOf(job) {
  const packed = new Blob([job]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  const bytes = new Uint8Array(await new Response(packed).arrayBuffer());
  const letters = btoa(String.fromCharCode(...bytes));
  return `#j1.${letters.replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/u, "")}`;
}
