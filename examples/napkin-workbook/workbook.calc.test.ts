import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ounces } from "@thrum/maths";
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

/** The cell beside these words in the first column. */
function beside(bytes: Uint8Array, sheet: string, words: string): string {
  const [at = ""] = [...cellsOf(bytes)].find(([place, text]) => place.startsWith(`${sheet}!A`) && text === words) ?? [];
  return at.replace("!A", "!B");
}

describeWith("LibreOffice Calc", (soffice) => {
  it("one piece more and another finished width: the edited workbook agrees with the plan of the edited job", () => {
    const workbook = written();
    const at = (words: string): string => beside(workbook, "Warp", words);
    const edits = new Map([
      [at("pieces"), 10],
      [at("reed to finished"), 20],
    ]);
    const [cells] = recalculated(soffice, [typedInto(workbook, edits)]);
    const job = readFileSync("examples/jobs/2-hall-napkins.yaml", "utf8")
      .replace("number: 9", "number: 10")
      .replace("widthReedToFinished: 15 %", "widthReedToFinished: 20 %");
    const reading = readJob(job);
    if (!reading.ok) throw new Error("the edited job is none");
    const { finishedWidth, pieceTape, warpLength, yarns } = planWarp(reading.job);
    const shown = (sheet: string, words: string): number => Number(cells?.get(beside(workbook, sheet, words)));
    // 18.4 × 0.8 = 14.72 in; 10 × 17.5 ÷ 0.9 ÷ 0.92 + 10 = 221.3527 in.
    expect(shown("Warp", "finished width")).toBeCloseTo(14.72, 12);
    expect(shown("Warp", "warp to wind")).toBeCloseTo(221.3527, 4);
    expect(shown("Warp", "finished width")).toBeCloseTo(Number(finishedWidth.value), 12);
    expect(shown("Warp", "warp to wind")).toBeCloseTo(Number(warpLength.value), 10);
    expect(shown("Warp", "all pieces on the loom")).toBeCloseTo(Number(pieceTape.woven.value), 10);
    expect(shown("Yarns", "weighs")).toBeCloseTo(yarns[0]?.mass.in(ounces) ?? 0, 10);
    expect(shown("Yarns", "packages to buy")).toBe(yarns[0]?.packages);
  }, 120_000);
});
