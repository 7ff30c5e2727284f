// What `check` makes of claims it had no part in making, over the whole corpus. Writes the table of the docs.
import { rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { root } from "../built.mjs";

const SEED = 6;
const PLAIN = 120;
const bundled = join(import.meta.dirname, "simulation.tmp.mjs");
await build({
  stdin: {
    contents: 'export * from "./simulation.js"; export * from "./wrong-methods/index.js";',
    resolveDir: import.meta.dirname,
  },
  bundle: true,
  format: "esm",
  outfile: bundled,
  alias: { "@thrum/maths": join(root, "packages/maths/src/index.ts") },
  external: ["decimal.js", "fast-check"],
  logLevel: "error",
});
const { simulate, open, closed, later } = await import(pathToFileURL(bundled).href);
const sums = [...open, ...closed, ...later];
const all = simulate(sums, SEED, undefined, PLAIN);
const half = simulate(closed, SEED, undefined, 0);
const last = simulate(later, SEED, undefined, 0);
await rm(bundled);

const percent = (part, of) => (of === 0 ? "–" : `${((100 * part) / of).toFixed(1)} %`);
const shares = ({ name, claims, hidden, first, further, another, nothing, asked }) => {
  const seen = claims - hidden;
  return `| ${[name, claims, ...[first, further, another, nothing, asked].map((one) => percent(one, seen)), hidden].join(" | ")} |`;
};
const { plain, rounded, right, certain, likely } = all;
const worst = [...plain.byFormula]
  .map(([name, [tried, named]]) => [name, named / tried])
  .sort((a, b) => b[1] - a[1])[0];
const head = [
  "| claims | n | first or alone | further down | another named | nothing | first where “would fit” is asked for | not to be seen |",
  "|---|---|---|---|---|---|---|---|",
];
const text = [
  "# What a check can see",
  "",
  "The outside figure first: of [fifteen mistakes that were printed](printed-mistakes.md) two are named, four are told by what is true of the number, nine are given no name, none a wrong one.",
  "",
  `The tables below are made by a simulation that shares nothing with the check (\`.ci/support/slips/simulation.ts\`, seed ${SEED}): ${sums.length} formulas, ${sums.reduce((n, { wrong }) => n + wrong.length, 0)} wrong methods as plain arithmetic on plain numbers (\`wrong-methods\` beside it), three sets of inputs each, written to four and three figures, whole or as money. ${open.length + closed.length} of the formulas were written and frozen before the operators of the check were, half of them closed until it was done; ${later.length} came later, and theirs were written and frozen before the check was put to them, which then named 85.5 % of them first or alone, another slip for none, and 1.4 % of the plain slips. One hand wrote both from the same literature, so expect less of mistakes that nobody here thought of. A name counts as right when its sum gives the pupil’s number at these inputs and at two other sets. “Not to be seen” are wrong sums that come to the right answer at these figures, or within a rounding of its lines.`,
  "",
  "## Wrong methods",
  "",
  ...head,
  ...all.families.map(shares),
  ...all.figures.map(shares),
  shares({ ...all.all, name: "**all**" }),
  shares({ ...half.all, name: "of these, formulas closed until the check was done" }),
  shares({ ...last.all, name: "of these, formulas that came later" }),
  "",
  `Each family counted alike: ${percent(all.unweighted.first, 1)} first or alone, ${percent(all.unweighted.another, 1)} another named. At most ${all.most} names or sentences stood in one verdict.`,
  "",
  "## What a word is worth",
  "",
  "Over the wrong methods and the plain slips together:",
  "",
  `- “certain” was right in ${percent(certain.right, certain.claims)} of ${certain.claims};`,
  `- the first of “likely” in ${percent(likely.right, likely.claims)} of ${likely.claims}.`,
  "",
  "## Who is accused",
  "",
  "| claims | n | what became of them |",
  "|---|---|---|",
  `| plain slips of long multiplication and division, of a last place, of any size | ${plain.claims} | named ${percent(plain.named, plain.claims)} (certain ${percent(plain.certain, plain.claims)}; with “would fit” ${percent(plain.asked, plain.claims)}); the formula with most: ${worst[0]}, ${percent(worst[1], 1)} |`,
  `| sound workings, each line or every step rounded to 3, 4 or 5 figures | ${rounded.claims} | right ${rounded.right}, right but for the last figure or for use ${rounded.nearly}, called wrong ${rounded.wrong}, accused of a slip ${rounded.accused} |`,
  `| right answers by fractions, rounded to 1–4 decimals | ${right.claims} | refused ${right.refused} |`,
  "",
  "The weights behind the names are ours, set from the literature; only answers of classes could correct them.",
  "",
].join("\n");
await writeFile(join(root, "docs/what-check-sees.md"), text);
process.stdout.write(`${text}\n`);
