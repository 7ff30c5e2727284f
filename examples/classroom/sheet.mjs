// Prints the sheet of a seed, then its key: node sheet.mjs 7
import { asText, explain } from "@thrum/maths";
import { problemsOf } from "./problems.mjs";

const problems = problemsOf(Number(process.argv[2] ?? 1));
const numbered = (texts) => texts.map((text, at) => `${at + 1}. ${text}`).join("\n\n");
const bare = ({ asks, given, rounding }) => [asks, ...given, `Write the answer ${rounding}.`].join("\n");
const sheet = problems.map((one) => (one.question ? `${one.asks}\n${asText(one.question)}` : bare(one)));
const key = problems.map((one) => {
  const working = asText(explain(one.calculation, one.input));
  return one.key ? `${asText(one.key)}\n${working}` : working;
});
process.stdout.write(`${numbered(sheet)}\n\nKey\n\n${numbered(key)}\n`);
