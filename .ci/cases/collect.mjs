// The cited cases of all packages, gathered from the tests that hold them: one cases.json a package.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, relative } from "node:path";
import { format } from "prettier";
import { packageNames, root } from "../support/built.mjs";

/** Runs the tests that hold them, and says where their report is. */
function reportOfTests() {
  const report = `${root}reports/cited.json`;
  const args = ["node_modules/vitest/vitest.mjs", "run", "--config", ".ci/vitest.config.ts"];
  const files = ["packages/", "--exclude", "**/*.{calc,chromium,jupyter,units}.test.ts"];
  const json = ["--reporter=dot", "--reporter=json", `--outputFile.json=${report}`];
  const { status } = spawnSync(process.execPath, [...args, ...files, ...json], { cwd: root, stdio: "inherit" });
  if (status !== 0) throw new Error("the tests do not pass: their cases are not collected");
  return report;
}

/** Every cited row with the package it stands in, of the tests run now or of the report of a whole run just before. */
export function citedRows(report = reportOfTests()) {
  const { success, testResults } = JSON.parse(readFileSync(report, "utf8"));
  if (!success) throw new Error(`${report}: the tests do not pass`);
  return testResults.flatMap(({ name, assertionResults }) =>
    assertionResults
      .filter(({ meta }) => meta?.cited !== undefined)
      .map(({ meta }) => ({ ...meta.cited, package: relative(root, name).split(/[\\/]/u)[1] })),
  );
}

const byText = (a, b) => (a < b ? -1 : a > b ? 1 : 0);

/** The text of a package's cases.json. */
function casesFile(rows) {
  const sources = Object.fromEntries(rows.map(({ source }) => [source.key, source]).sort(([a], [b]) => byText(a, b)));
  const cases = rows
    .map(({ title, call, args, read, source, at, status, prints, exact, differs }) => ({
      title,
      call,
      args,
      read,
      source: source.key,
      at,
      status,
      prints,
      exact,
      ...(differs === undefined ? {} : { differs }),
    }))
    .sort((a, b) => byText(a.call, b.call) || byText(a.title, b.title));
  return format(JSON.stringify({ sources, cases }), { parser: "json", printWidth: 120 });
}

/** Writes the files, or with `check` only tells which are not as collected. */
export async function writeCases(rows, { check }) {
  const stale = [];
  for (const name of packageNames) {
    const own = rows.filter((row) => row.package === name);
    const path = `packages/${name}/src/verification/cases.json`;
    if (own.length === 0 && !existsSync(root + path)) continue;
    const text = await casesFile(own);
    if (existsSync(root + path) && readFileSync(root + path, "utf8") === text) continue;
    if (check) stale.push(path);
    else {
      mkdirSync(dirname(root + path), { recursive: true });
      writeFileSync(root + path, text);
    }
  }
  return stale;
}
