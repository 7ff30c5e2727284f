import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { planWarp, readJob } from "@thrum/plan";
import { isSameFile, readText, writeWhole } from "@thrum/plan/files";
import { describe, expect, it } from "vitest";
import { workbookOf } from "../workbook-of.js";
import { HELP } from "./help.js";
import { run } from "./run.js";

const JOB = "examples/jobs/2-hall-napkins.yaml";
const text = readFileSync(JOB, "utf8");
const reading = readJob(text);
const workbook = reading.ok ? workbookOf(planWarp(reading.value)) : new Uint8Array();

interface Ran {
  readonly code: number;
  readonly printed: Uint8Array | string;
  readonly complained: string;
}

function ran(args: readonly string[], isScreen = false): Ran {
  let printed: Uint8Array | string = "";
  let complained = "";
  const code = run(args, {
    read: readText,
    write: writeWhole,
    isSameFile,
    print: (content) => {
      printed = content;
    },
    complain: (words) => {
      complained += words;
    },
    isScreen,
  });
  return { code, printed, complained };
}

const folder = mkdtempSync(join(tmpdir(), "thrum-sheets-"));

describe("the command for workbooks", () => {
  it("teaches itself when asked for nothing, in 80 columns", () => {
    for (const args of [[], ["--help"], ["-h", JOB]])
      expect(ran(args)).toEqual({ code: 0, printed: HELP, complained: "" });
    for (const line of HELP.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
  });

  it("writes the workbook of the plan, whole, and leaves nothing beside it", () => {
    const file = join(folder, "plan.xlsx");
    expect(ran([JOB, "--to", file])).toEqual({ code: 0, printed: "", complained: "" });
    expect(new Uint8Array(readFileSync(file))).toEqual(workbook);
    expect(ran([JOB, "--to", file]).complained).toContain("it exists already");
    expect(ran([JOB, "--to", file, "--replace"]).code).toBe(0);
    expect(readdirSync(folder)).toEqual(["plan.xlsx"]);
    expect(ran([JOB, "--to", join(folder, "none", "plan.xlsx")]).code).toBe(4);
  });

  it("writes to standard output, unless that is a screen", () => {
    expect(ran([JOB]).printed).toEqual(workbook);
    expect(ran([JOB], true)).toMatchObject({ code: 2, printed: "" });
  });

  it("tells all the faults of a job and writes nothing", () => {
    const [job, file] = [join(folder, "bad.yaml"), join(folder, "bad.xlsx")];
    writeFileSync(job, text.replace("number: 9", "number: 0").replace("On: left", "On: up"));
    const { code, complained } = ran([job, "--to", file]);
    expect(code).toBe(1);
    expect(complained).toContain("bad.yaml: 2 faults");
    expect(existsSync(file)).toBe(false);
  });

  it("writes the workbook of a warp that does not fit, and says so in its exit code", () => {
    const job = join(folder, "three.yaml");
    writeFileSync(job, text.replace("\ncloth:\n", "\ncloth:\n  threading: [1, 3, 2, 4]\n"));
    const { code, printed, complained } = ran([job]);
    expect(code).toBe(3);
    expect(printed.length).toBeGreaterThan(1000);
    expect(complained).toContain("does not fit");
  });

  it.each([
    [[JOB, "plan.xlsx"], "--to FILE"],
    [[JOB, "--to", "-"], "leave it out"],
    [[JOB, "--to", ""], "--to needs the name of a file."],
    [[JOB, "--replace"], "--replace goes with --to FILE"],
    [["--to", "plan.xlsx"], "Which job file?"],
    [[JOB, "--loud"], "--loud"],
  ])("does not guess what %j means", (args, says) => {
    const { code, printed, complained } = ran(args);
    expect({ code, printed }).toEqual({ code: 2, printed: "" });
    expect(complained).toContain(says);
  });

  it("never takes the place of the job it was made from", () => {
    const job = join(folder, "own.yaml");
    writeFileSync(job, text);
    const { code, complained } = ran([job, "--to", job, "--replace"]);
    expect(code).toBe(4);
    expect(complained).toContain("is the job file itself");
    expect(readFileSync(job, "utf8")).toBe(text);
  });

  it("names a file that cannot be read", () => {
    expect(ran([join(folder, "none.yaml")])).toMatchObject({ code: 4, printed: "" });
  });
});
