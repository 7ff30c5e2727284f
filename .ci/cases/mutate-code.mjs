// node .ci/cases/mutate-code.mjs [folder …]: StrykerJS changes the plain code of the folders named (all, if none is), a place at a time,
// and asks whether any test notices. Formulas are data, with a command of their own (pnpm mutate). Takes long: not in CI.
import { readdirSync, readFileSync } from "node:fs";
import { Stryker } from "@stryker-mutator/core";
import { root } from "../support/built.mjs";
import { printTable } from "../bench/table.mjs";

const REQUIRED = 85;
const handbook = "packages/maths/src/handbook";
const stripes = "packages/stripes/src";

/** Where the tests of each folder stand: stripes are tested together, the maths each beside its code. */
const testsOf = new Map([
  ...readdirSync(root + stripes, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => [`${stripes}/${name}`, stripes]),
  ...["yarn", "reed", "tie-on", "weave", "sett", "cloth"].map((name) => [`${handbook}/${name}`, `${handbook}/${name}`]),
  ["packages/maths/src/units/reading", "packages/maths/src/units/reading"],
]);

/** The files of a folder that hold code: neither tests, nor lists of exports, nor declared calculations. */
function plainCode(folder) {
  return readdirSync(root + folder)
    .filter((file) => /^(?!index\.)[a-z-]+\.ts$/u.test(file))
    .map((file) => `${folder}/${file}`)
    .filter((path) => !readFileSync(root + path, "utf8").includes("calculation("));
}

async function scoreOf(folder) {
  const results = await new Stryker({
    mutate: plainCode(folder),
    testRunner: "vitest",
    plugins: ["@stryker-mutator/vitest-runner"],
    vitest: { configFile: ".ci/cases/vitest.mutate.config.ts", dir: testsOf.get(folder) },
    concurrency: 1,
    // Code that also runs while a test file loads is held against the tests that run it, not against all of them.
    ignoreStatic: true,
    reporters: ["clear-text"],
    clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportScoreTable: false },
    tempDirName: "reports/mutants",
    ignorePatterns: ["docs", "examples", "dist", "reports"],
    logLevel: "warn",
  }).runMutationTest();
  const is = (...statuses) => results.filter(({ status }) => statuses.includes(status)).length;
  const noticed = is("Killed", "Timeout");
  return { noticed, of: noticed + is("Survived", "NoCoverage") };
}

const asked = process.argv.slice(2);
const folders = [...testsOf.keys()].filter(
  (folder) => asked.length === 0 || asked.some((part) => folder.endsWith(part)),
);
if (folders.length === 0) throw new Error(`no such folder; there are ${[...testsOf.keys()].join(", ")}`);
const rows = [];
for (const folder of folders) {
  const { noticed, of } = await scoreOf(folder);
  const score = (100 * noticed) / of;
  const figure = `${noticed} of ${of}, ${score.toFixed(1)} %`;
  rows.push({ line: folder, figure, budget: `${REQUIRED} %`, holds: score >= REQUIRED });
}
printTable(rows);
process.exitCode = rows.every(({ holds }) => holds) ? 0 : 1;
