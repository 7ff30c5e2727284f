import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planWarp } from "../plan/plan-warp.js";
import { planText } from "../text/plan-text.js";
import { faultText } from "./fault.js";
import { readJob } from "./read-job.js";

const lines = readFileSync("examples/hall-napkins/job.yaml", "utf8").split("\n");
const VALUES = ["0", "-1", "1", "2", "1.5", "7000", "1e99", ".nan", "null", "[]", "{}", "3 in", "2 kg", "99 % lost"];

type Edit = (line: string, value: string) => readonly string[];
const edits: readonly Edit[] = [
  () => [],
  (line) => [line, line],
  (line, value) => [line.replace(/\d+/u, value)],
  (line, value) => [line.replace(/: .*$/u, `: ${value}`)],
  (line) => [line.slice(0, Math.floor(line.length / 2))],
  (line) => [line.replace(/[a-z]:/u, "x:")],
  (line, value) => [line.replace(/\d+(?= [%a-z])/u, value)],
];

const slip = fc.record({
  at: fc.nat(lines.length - 1),
  edit: fc.constantFrom(...edits),
  value: fc.constantFrom(...VALUES),
});

/** Another in every run, printed in the name of the test; THRUM_SEED repeats one. */
const seed = Number(process.env["THRUM_SEED"] ?? Date.now() % 2 ** 31);

describe(`a job file with slips in it (seed ${String(seed)})`, () => {
  it("is planned or answered with faults, never with a crash", () => {
    fc.assert(
      fc.property(fc.array(slip, { minLength: 1, maxLength: 3 }), (slips) => {
        const text = lines
          .flatMap((line, at) =>
            slips
              .filter((one) => one.at === at)
              .reduce<readonly string[]>((now, { edit, value }) => now.flatMap((one) => edit(one, value)), [line]),
          )
          .join("\n");
        const reading = readJob(text);
        if (reading.ok) expect(planText(planWarp(reading.job))).not.toMatch(/NaN|undefined|Infinity/u);
        else
          for (const fault of reading.faults) expect(faultText(fault)).toMatch(/^line \d+.*expected .+, received .+/u);
      }),
      { numRuns: 300, seed },
    );
  });
});
