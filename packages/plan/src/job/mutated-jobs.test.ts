import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { faultText } from "./fault.js";
import { jobText } from "./job-text.js";
import { readJob } from "./read-job.js";

const FOLDER = "examples/jobs/";
const texts = readdirSync(FOLDER)
  .filter((name) => /^\d[^.]*\.yaml$/u.test(name))
  .map((name) => readFileSync(FOLDER + name, "utf8"));
const values = [...new Set(texts.flatMap((text) => text.match(/(?<=: |- |\[|, )[^,:{}[\]\n#]+/gu) ?? []))];
const marks = [
  ":",
  ",",
  "{",
  "}",
  "[",
  "]",
  "#",
  '"',
  "'",
  "-",
  "?",
  "&a ",
  "*a",
  "!b ",
  "%",
  "\t",
  "\n",
  "  ",
  "½",
  "\u0000",
  "\u202e",
];

type Mutation = (text: string, at: number, more: number) => string;

/** The value of one key, chosen by `at`, put through `change`. */
function onValue(text: string, at: number, change: (value: string) => string): string {
  const found = [...text.matchAll(/(?<=: |- |\[|, )[^,:{}[\]\n#]+/gu)];
  const one = found[at % Math.max(found.length, 1)];
  return one === undefined ? text : text.slice(0, one.index) + change(one[0]) + text.slice(one.index + one[0].length);
}

function onLines(text: string, change: (lines: string[]) => string[]): string {
  return change(text.split("\n")).join("\n");
}

const MUTATIONS: readonly Mutation[] = [
  (text, at, more) => onValue(text, at, () => values[more % values.length] ?? ""),
  (text, at, more) => onValue(text, at, (value) => value.replace(/\d+/u, String(more % 400))),
  (text, at, more) =>
    onValue(text, at, (value) =>
      value.replace(/\d+/u, ["0", "-1", "1.5", "1/2", "999999", "1e9", "½"][more % 7] ?? ""),
    ),
  (text, at, more) =>
    onValue(text, at, (value) =>
      value.replace(/\b(?:in|cm|yd|oz|g|lb|m)\b/u, ["in", "cm", "yd", "oz", "g", "ell"][more % 6] ?? ""),
    ),
  (text, at) => onValue(text, at, () => ""),
  (text, at) => onLines(text, (lines) => lines.filter((_, line) => line !== at % lines.length)),
  (text, at) =>
    onLines(text, (lines) => lines.flatMap((line, number) => (number === at % lines.length ? [line, line] : [line]))),
  (text, at, more) =>
    onLines(text, (lines) =>
      lines.map((line, number) => (number === at % lines.length ? (lines[more % lines.length] ?? "") : line)),
    ),
  (text, at, more) =>
    text.slice(0, at % text.length) + (marks[more % marks.length] ?? "") + text.slice(at % text.length),
  (text, at, more) => text.slice(0, at % text.length) + text.slice((at % text.length) + 1 + (more % 3)),
  (text, at) => text.slice(0, at % text.length),
];

const mutated = fc
  .tuple(
    fc.constantFrom(...texts),
    fc.array(fc.tuple(fc.constantFrom(...MUTATIONS), fc.nat(5000), fc.nat(5000)), { minLength: 1, maxLength: 2 }),
  )
  .map(([text, changes]) => changes.reduce((done, [mutation, at, more]) => mutation(done, at, more), text));

const number = Number(process.env["THRUM_MUTATED_JOBS"] ?? 300);

describe("changed jobs", () => {
  it("are read as what their text says again, or refused with places, whatever was changed", () => {
    let [read, all] = [0, 0];
    const faults = new Map<string, number>();
    fc.assert(
      fc.property(mutated, (text) => {
        const reading = readJob(text);
        all += 1;
        if (reading.ok) {
          read += 1;
          const again = readJob(jobText(reading.job));
          expect(again.ok && again.job).toEqual(reading.job);
          return;
        }
        expect(reading.faults.length).toBeGreaterThan(0);
        for (const fault of reading.faults) {
          faults.set(fault.code, (faults.get(fault.code) ?? 0) + 1);
          expect(fault.line).toBeGreaterThan(0);
          expect(fault.remedy).not.toBe("");
          expect(faultText(fault)).not.toMatch(/[\p{Cc}\p{Cf}]|undefined|NaN|\[object/u);
        }
      }),
      { seed: 20261130, numRuns: number, endOnFailure: true },
    );
    if (number > 300)
      process.stdout.write(`${String(read)} of ${String(all)} read; faults: ${JSON.stringify([...faults])}\n`);
    expect(read / all).toBeGreaterThan(0.3);
  });
});
