// What the compiler pays for 200 lines of user code, and how long its refusals are.
import { spawnSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { mainModule, root } from "../support/built.mjs";
import { countAtMost } from "./row.mjs";

const folder = `${root}reports/types`;
const names = "asText, cottonCount, explain, foldedCount, grains, inches, percentAdded, percentLost, warpLength, yards";
const head = `import { ${names} } from ${JSON.stringify(mainModule("maths"))};\n`;
const input = (change = {}) => {
  const fields = {
    pieces: "8",
    finishedLength: "inches(21)",
    hemEachEnd: "inches(1)",
    loomToFinished: "percentLost(10)",
    takeUp: "percentLost(8)",
    loomWaste: "inches(30)",
    ...change,
  };
  return `{ ${Object.entries(fields)
    .map(([name, value]) => `${name}: ${value}`)
    .join(", ")} }`;
};

function compiled(file, text) {
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}/${file}`, text);
  const options = ["--strict", "--noEmit", "--skipLibCheck", "--target", "es2022", "--module", "nodenext"];
  const tsc = [
    `${root}node_modules/typescript/bin/tsc`,
    ...options,
    "--pretty",
    "false",
    "--extendedDiagnostics",
    file,
  ];
  const { stdout } = spawnSync(process.execPath, tsc, { cwd: folder, encoding: "utf8" });
  const [, instantiations] = /^Instantiations:\s+(\d+)/m.exec(stdout) ?? [];
  if (instantiations === undefined) throw new Error(stdout);
  const errors = stdout
    .split(/^Files:/m)[0]
    .trim()
    .split(/\n(?! )/)
    .filter((error) => error !== "");
  return { instantiations: Number(instantiations), errors: errors.map((error) => error.replace(/^[^:]*: /, "")) };
}

function instantiationsRow() {
  const lines = Array.from({ length: 100 }, (_, line) => [
    `export const answer${line}: number = warpLength(${input({ pieces: String(line + 1) })}).in(yards);`,
    `export const working${line}: string = asText(explain(warpLength, ${input({ pieces: String(line + 1) })}));`,
  ]);
  const { instantiations, errors } = compiled("user.mts", head + lines.flat().join("\n"));
  if (errors.length > 0) throw new Error(errors.join("\n"));
  return countAtMost("200 lines of answers and workings", instantiations, 1000, "instantiations");
}

function errorRows() {
  const faults = {
    "a mass for a length": `warpLength(${input({ finishedLength: "grains(21)" })});`,
    "another base of a percentage": `warpLength(${input({ takeUp: "percentAdded(8)" })});`,
    "a length read in a unit of mass": "yards(1).in(grains);",
    "a mass in a list of counts": "foldedCount({ counts: [cottonCount(20), grains(20)] });",
  };
  const { errors } = compiled("refused.mts", head + Object.values(faults).join("\n"));
  if (errors.length !== Object.keys(faults).length) throw new Error(`expected one error a line:\n${errors.join("\n")}`);
  return Object.keys(faults).map((fault, index) =>
    countAtMost(`error: ${fault}`, errors[index].length, 200, "characters"),
  );
}

export function figures() {
  return [instantiationsRow(), ...errorRows()];
}
