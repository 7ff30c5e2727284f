import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inches, pounds } from "@thrum/maths";
import { planWarp, readJob } from "@thrum/plan";
import { expect, it } from "vitest";
import { cellsOf, recalculated, typedInto } from "#ci/calc.js";
import { describeWith } from "#ci/program.js";

const here = { cwd: "examples/napkin-workbook", encoding: "utf8" } as const;
const COMMAND = "node_modules/@thrum/sheets/dist/cli.js";
const JOB = "../jobs/2-hall-napkins.yaml";

function written(): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), "thrum-workbook-"));
  const file = join(folder, "plan.xlsx");
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, JOB, "--to", file], here);
  expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: "", stderr: "" });
  const bytes = new Uint8Array(readFileSync(file));
  rmSync(folder, { recursive: true });
  return bytes;
}

/** A cell of the row that these words head. */
function at(bytes: Uint8Array, sheet: string, words: string, column: string): string {
  const [place = ""] =
    [...cellsOf(bytes)].find(([cell, text]) => cell.startsWith(`${sheet}!A`) && text === words) ?? [];
  return place.replace("!A", `!${column}`);
}

describeWith("LibreOffice Calc", (soffice) => {
  it("one piece more and another finished width: the edited workbook agrees with the plan of the edited job", () => {
    const workbook = written();
    const edits = new Map([
      [at(workbook, "Plan", "as written", "C"), 10],
      [at(workbook, "Given", "cloth.widthReedToFinished.lost", "B"), 20],
    ]);
    const [cells] = recalculated(soffice, [typedInto(workbook, edits)]);
    const job = readFileSync("examples/jobs/2-hall-napkins.yaml", "utf8")
      .replace("number: 9", "number: 10")
      .replace("widthReedToFinished: 15 %", "widthReedToFinished: 20 %");
    const reading = readJob(job);
    if (!reading.ok) throw new Error("the edited job is none");
    const { loom, warp, yarn } = planWarp(reading.value).figures;
    const shown = (words: string): number => Number(cells?.get(at(workbook, "Plan", words, "C")));
    // 18.4 × 0.8 = 14.72 in; 10 × 17.5 ÷ 0.9 ÷ 0.92 + 10 = 221.3527 in.
    expect(shown("finished width")).toBeCloseTo(14.72, 12);
    expect(shown("warp to wind")).toBeCloseTo(221.3527, 4);
    expect(shown("finished width")).toBeCloseTo(Number(loom.finishedWidth.value?.in(inches)), 12);
    expect(shown("warp to wind")).toBeCloseTo(Number(warp.length.value?.in(inches)), 10);
    expect(shown("woven in all")).toBeCloseTo(Number(warp.woven.value?.in(inches)), 10);
    expect(shown("mass")).toBeCloseTo(Number(yarn["natural"]?.mass.value?.in(pounds)), 10);
    expect(shown("packages to buy")).toBe(yarn["natural"]?.packages.value);
  }, 120_000);
});
