import type { Judged } from "./judged.js";
import type { FoundSlip, Verdict } from "./verdict.js";

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
const bare = ({ says }: FoundSlip): string => says.replace(/^a sum that /u, "").replace(/,? gives this$/u, "");

/** What a sum does wrong, as a whole sentence. */
export const saying = (says: string): string =>
  `a sum that ${says}${/, [^,]* [^,]*$/u.test(says) ? "," : ""} gives this`;

function named(slips: readonly FoundSlip[], tellApart: string | null): string {
  const [one, two, three] = slips.map(bare);
  if (one === undefined) return "";
  if (two === undefined) {
    const [slip] = slips;
    const line = slip?.line ?? "";
    const gives = slip?.certainty === "certain" ? "gives just this" : "would give this";
    const sum = saying(one).replace(/gives this$/u, gives);
    return `${line === "" ? capital(sum) : `At the line ${line}, ${sum}`}.`;
  }
  const last = three === undefined ? "" : `, one that ${three}`;
  const apart = tellApart === null ? "" : `; ${tellApart}`;
  return `${three === undefined ? "Two" : "Three"} sums give this: one that ${one}, one that ${two}${last}${apart}.`;
}

const HEADS: Readonly<Record<Verdict["value"], string>> = {
  right: "is right",
  "within the tolerance": "is within the tolerance",
  "right by the adding rule": "is right by the adding rule",
  "right by the dividing rule": "is right by the dividing rule",
  "right but for the last figure": "is right but for the last figure: a line was rounded early; keep one more figure",
  "right, rounded for use": "is right, rounded for use",
  "not finished": "is not finished",
  "cut off, not rounded": "is cut off, not rounded",
  wrong: "is not the answer",
};

/** The first sentence: the number, what is true of it, and its unit. */
function head(verdict: Omit<Verdict, "says">, { unit, asked, exact }: Judged, written: string): string {
  const { value, digits, rounded, facts } = verdict;
  const symbol = unit === null ? "" : ` ${unit.symbol}`;
  const claim = /[a-z"″'′%]$/iu.test(written.trim()) ? written.trim() : `${written.trim()}${symbol}`;
  const [fact] = facts;
  const after: Readonly<Partial<Record<Verdict["value"], string>>> = {
    right: digits === "exact" ? ": the exact answer" : ": the answer rounded, halves up, to the digits written",
    "within the tolerance": `; to these digits the answer is ${rounded}${symbol}`,
    "right, rounded for use": `; more exactly ${exact.toSignificantDigits(6).toString()}${symbol}`,
    "not finished": `: give ${String(asked)} ${asked === 1 ? "decimal" : "decimals"}`,
    "cut off, not rounded": `: to these digits the answer is ${rounded}${symbol}`,
    wrong: fact === undefined ? "" : `: ${fact.says}`,
  };
  return `${claim} ${HEADS[value]}${after[value] ?? ""}.`;
}

/** A verdict in at most three sentences: the number and what is true of it, what was done, what to do next. */
export function sentencesOf(verdict: Omit<Verdict, "says">, judged: Judged, written: string): readonly string[] {
  const { value, slips, tellApart, cost, lookAt, notes } = verdict;
  const first = [head(verdict, judged, written), ...(notes.length === 0 ? [] : [notes.join(" ")])];
  if (value !== "wrong" && value !== "cut off, not rounded") return first;
  const reason = named(slips, tellApart);
  const help =
    lookAt === null
      ? "Write out the lines: what is wrong shows there."
      : `Write out the lines and look first at ${lookAt}.`;
  const next = cost !== null ? `What it costs: ${cost}.` : "";
  const rest = reason === "" ? [value === "wrong" ? help : "", next] : [reason, next];
  return [...first, ...rest.filter((text) => text !== "")].slice(0, 3);
}
