import type { Verdict } from "./verdict.js";

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** As many of the slips that cannot be seen as one reads. */
const MOST_UNSEEN = 3;

/** A verdict in sentences: number and digits, unit, convention, slips with their line, what tells them apart, cost, blind spots. */
export function told(verdict: Omit<Verdict, "says">, written: string, symbol: string): readonly string[] {
  const { value, digits, rounded, notes, slips, tellApart, cost, unseen } = verdict;
  const [claim, answer] = [written, rounded].map((text) => (symbol === "" ? text : `${text} ${symbol}`));
  const number: Readonly<Record<Verdict["value"], string>> = {
    right:
      digits === "exact" ? "right: the exact answer" : "right: the answer rounded, halves up, to the digits written",
    "within the tolerance": `within the tolerance; to these digits the answer is ${String(answer)}`,
    "right by the adding rule": "right by the adding rule",
    "right by the dividing rule": "right by the dividing rule",
    "cut off, not rounded": `cut off, not rounded: to these digits the answer is ${String(answer)}`,
    wrong: "not the answer",
  };
  const more = unseen.length - MOST_UNSEEN;
  const named = slips.map(({ says, line }) => sentence(line === "" ? says : `at the line ${line}, ${says}`));
  return [
    `${String(claim)} is ${number[value]}.`,
    ...notes,
    ...(value === "wrong" && slips.length === 0 ? ["No slip we know gives it."] : named),
    ...(tellApart === null ? [] : [sentence(tellApart)]),
    ...(cost === null ? [] : [`What it costs: ${cost}.`]),
    ...unseen
      .slice(0, MOST_UNSEEN)
      .map(({ says }) => `To these digits the check cannot see ${says.replace(/ gives this$/u, "")}.`),
    ...(more > 0 ? [`Nor can it see ${String(more)} more slips: one more digit would show most of them.`] : []),
  ];
}
