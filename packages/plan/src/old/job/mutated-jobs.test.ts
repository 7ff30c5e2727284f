import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { run } from "../command/run.js";
import { FileTrouble } from "../command/world.js";

const jobs = readdirSync("examples").flatMap((folder) =>
  readdirSync(`examples/${folder}`)
    .filter((file) => file.endsWith(".yaml"))
    .map((file) => readFileSync(`examples/${folder}/${file}`, "utf8").split("\n")),
);

const NUMBERS = ["0", "1", "2", "3", "5", "8", "13", "24", "100", "7000", "1e99", "-1", "1.5"];
const VALUES = [".nan", "null", "[]", "{}", "3 in", "2 kg", "99 % lost", "12 cm", "left", "weaver's", "__proto__"];
const UNITS = ["in", "cm", "yd", "oz", "g", "% lost", "% added", "EUR", "kg", ""];

type Edit = (line: string, at: number) => readonly string[];
const pick = (list: readonly string[], at: number): string => list[at % list.length] ?? "";
/** Slips of the pen more often than slips that leave no job: a third of the files must still be one. */
const edits: readonly Edit[] = [
  (line, at) => [line.replace(/\d+/u, pick(NUMBERS, at))],
  (line, at) => [line.replace(/\d+(?=[^\d]*$)/u, pick(NUMBERS, at))],
  (line, at) => [line.replace(/(?<=\d )(?:in|cm|yd|oz|g|EUR)\b/u, pick(UNITS, at))],
  (line) => [line.replace(/\d/u, (digit) => String((Number(digit) % 9) + 1))],
  (line) => [line.replace(/#.*$/u, "")],
  (line) => [line.replace(/\d(?=\d)/u, "")],
  (line) => (/colour|repeat/u.test(line) ? [line, line] : [line]),
  (line, at) => [line.replace(/(?<=(?:title|note): ).*$/u, pick(["\u001b[2J", "a: b", "'", "<b>", "| x", "√"], at))],
  () => [],
  (line, at) => [line.replace(/: .*$/u, `: ${pick(VALUES, at)}`)],
  (line) => [line.slice(0, Math.floor(line.length / 2))],
  (line) => [line.replace(/[a-z]:/u, "x:")],
];

const mutant = fc.record({
  job: fc.constantFrom(...jobs),
  slips: fc.array(fc.record({ at: fc.nat(99), edit: fc.constantFrom(...edits), with: fc.nat(999) }), {
    minLength: 1,
    maxLength: 3,
  }),
});

function textOf({ job, slips }: typeof mutant extends fc.Arbitrary<infer T> ? T : never): string {
  const lines = job.map((line, at) =>
    slips
      .filter((one) => one.at % job.length === at)
      .reduce<readonly string[]>((now, slip) => now.flatMap((one) => slip.edit(one, slip.with)), [line]),
  );
  return lines.flat().join("\n");
}

/** What the command prints and complains of for a job; a file it would have to open is trouble. */
function told(text: string): { readonly code: number; readonly printed: string; readonly complaint: string } {
  const out = { printed: "", complaint: "" };
  const code = run(["plan", "-"], {
    read: () => text,
    isSameFile: () => false,
    write: () => {
      throw new FileTrouble("no file was asked for");
    },
    print: (words) => (out.printed += words),
    complain: (words) => (out.complaint += words),
  });
  return { code, ...out };
}

/** Another in every run, printed in the name of the test; THRUM_SEED repeats one. THRUM_JOBS=10000 takes minutes: seed 20261125 passed on 25 November 2026. */
const seed = Number(process.env["THRUM_SEED"] ?? Date.now() % 2 ** 31);
const many = Number(process.env["THRUM_JOBS"] ?? 300);

describe(`${String(many)} job files with slips in them (seed ${String(seed)})`, () => {
  it("are planned whole or answered with faults alone, never with a crash", { timeout: 900_000 }, () => {
    const texts = fc.sample(mutant, { numRuns: many, seed }).map(textOf);
    const codes = texts.map((text) => {
      const { code, printed, complaint } = told(text);
      if (code === 1) {
        expect(printed, text).toBe("");
        expect(complaint, text).toMatch(/^-: \d+ faults?\n(?:line \d+.*expected .+, received .+\n)+$/u);
      } else {
        expect([0, 3], text).toContain(code);
        expect(printed, text).toContain("THE WORKINGS");
        expect(printed, text).not.toMatch(/NaN|undefined|Infinity|\[object/u);
      }
      return code;
    });
    expect(codes.filter((code) => code !== 1).length / many).toBeGreaterThan(0.3);
  });
});
