import type { Remarks } from "../working/index.js";
import type { Verdict } from "./verdict.js";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What is to be said of the number alone; of one that is right by another convention the notes tell. */
function ofNumber({ value, digits, rounded, judgedIn }: Verdict): readonly string[] {
  const answer = judgedIn === "" ? rounded : `${rounded} ${judgedIn}`;
  if (value === "right") {
    return [`The number is right${digits === "exact" ? " to its last digit" : ", rounded to the digits written"}.`];
  }
  if (value === "within the tolerance") return [`The number is within the tolerance; to these digits it is ${answer}.`];
  if (value === "cut off, not rounded") return [`The number is cut off, not rounded: rounded it is ${answer}.`];
  return value === "wrong" ? [`The number is not right: to these digits it is ${answer}.`] : [];
}

function ofSlips({ value, slips, tellApart }: Verdict): readonly string[] {
  if (slips.length === 0) return value === "wrong" ? ["No known slip gives this."] : [];
  const each = slips.map(({ says, line }) => `${capital(says)}${line === "" ? "" : `, in the line of ${line}`}.`);
  return tellApart === null ? each : [...each, `To tell them apart: ${tellApart}.`];
}

/** As many slips as one reads of those that cannot be seen. */
const MOST_UNSEEN = 3;

function ofUnseen({ unseen }: Verdict): readonly string[] {
  const more = unseen.length - MOST_UNSEEN;
  return [
    ...unseen.slice(0, MOST_UNSEEN).map(({ says }) => `These digits do not show it, but ${says} too.`),
    ...(more > 0 ? [`So do ${String(more)} more slips: ask for another digit.`] : []),
  ];
}

/**
 * A verdict in sentences, for `asText`, `asMarkdown`, `asLatex`, `asMathML` or `asHtml` to print: what the number is, what
 * is to be said of its unit, the slips that give it and what tells them apart, what it costs, what these digits hide.
 *
 * @param verdict what `check` gives
 * @example
 * const input = { finishedWidth: inches(18), reedToFinished: percentLost(10) };
 * remarks(check(widthInReed, input, { written: "20", unit: inches })).remarks[0] // "The number is right to its last digit."
 */
export function remarks(verdict: Verdict): Remarks {
  const { about, notes, cost } = verdict;
  return {
    about,
    remarks: [
      ...ofNumber(verdict),
      ...notes,
      ...ofSlips(verdict),
      ...(cost === null ? [] : [`What it costs: ${cost}.`]),
      ...ofUnseen(verdict),
    ],
  };
}
