import { described } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import { sourceText } from "./as-text.js";
import { isTold, isWorking, linesOf, resultApart } from "./working.js";
import type { Told, Working } from "./working.js";

/** Text with nothing left that Markdown or HTML would act on. */
function plain(text: string): string {
  return text.replace(/[\\`*_[\]{}<>|#&~]/gu, (mark) => `&#${String(mark.codePointAt(0))};`);
}

/**
 * A working as Markdown: a table of what went in, then each line with its numbers. Sentences become a list.
 *
 * @param working what `explain`, `check` or `problem` gives
 * @throws QuantityError "wrong-kind" for anything else
 */
export function asMarkdown(working: Told | Working): string {
  if (isTold(working)) return working.says.map((text) => `- ${plain(text)}`).join("\n");
  if (!isWorking(working)) {
    throw new QuantityError({
      code: "wrong-kind",
      function: "asMarkdown",
      path: ["working"],
      expected: "a working",
      received: described(working),
      remedy: "Write asMarkdown(explain(calculation, input)).",
    });
  }
  const inputs = working.inputs.map(
    ({ name, value, meaning }) => `| ${plain(name)} | ${plain(value)} | ${plain(meaning)} |`,
  );
  const conversions = working.conversions.map(({ name, text }) => `- ${plain(name)}: ${plain(text)}`);
  const steps = working.steps.map((step, at) => {
    const lines = linesOf(step).map(({ name, sign, text }, line, all) => {
      const told = line === all.length - 1 ? `**${plain(text)}**` : plain(text);
      return `${name === "" ? "" : `**${plain(name)}** `}${plain(sign)} ${told}`;
    });
    return `${String(at + 1)}. ${lines.join("<br>")}`;
  });
  const apart = resultApart(working);
  const result = apart === null ? [] : [`That is ${plain(apart.sign)} **${plain(apart.value)}**.`];
  return [
    ["| | | |", "|---|---|---|", ...inputs].join("\n"),
    conversions.join("\n"),
    steps.join("\n"),
    ...result,
    `Source: ${plain(sourceText(working.source))}.`,
  ]
    .filter(Boolean)
    .join("\n\n");
}
