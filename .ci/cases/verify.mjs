// pnpm verify: runs every cited case, prints the summary of the verification table, and compares the collected files with
// the committed ones; with --write it writes them. With --last-run it takes the cases of the tests that CI has just run.
import { mathsSource } from "../support/source.mjs";
import { citedRows, writeCases } from "./collect.mjs";
import { isPublished } from "./rows.mjs";

const { digitsAgreeing } = await mathsSource();

const write = process.argv.includes("--write");
const rows = process.argv.includes("--last-run") ? citedRows("reports/vitest.json") : citedRows();
const stale = await writeCases(rows, { check: !write });
const published = rows.filter(isPublished);
/** Rows come from a report of tests, their answers as text. */
const answerOf = ({ value }) => (Number.isNaN(Number(value)) ? value : Number(value));
const digits = rows.map((row) => ({ row, digits: digitsAgreeing(answerOf(row), row.exact) }));
const worst = digits.reduce((a, b) => (b.digits < a.digits ? b : a));
const misprints = published.filter(({ differs }) => differs?.startsWith("misprint"));
const count = (label, number) => process.stdout.write(`${String(number).padStart(6)}  ${label}\n`);

count("functions with cited cases", new Set(rows.map(({ call }) => call)).size);
for (const name of new Set(rows.map((row) => row.package))) {
  count(`published cases in @thrum/${name}`, published.filter((row) => row.package === name).length);
}
count("published cases in all", published.length);
count("of them printed as the exact answer, rounded", published.filter(({ differs }) => differs === undefined).length);
count("of them misprints of the source", misprints.length);
count("cases from memory or without a printed answer, not counted above", rows.length - published.length);
count("cases agreeing with the exact answer in 12 digits or more", digits.filter((one) => one.digits >= 12).length);
process.stdout.write(
  `worst: ${worst.digits} digits, "${worst.row.title}": ours ${worst.row.value}, exact ${worst.row.exact}\n`,
);
if (stale.length > 0) {
  process.stderr.write(`not as collected: ${stale.join(", ")}; run pnpm verify --write\n`);
  process.exit(1);
}
