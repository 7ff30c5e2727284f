import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { planText, planWarp, readJob } from "@thrum/plan";
import { describe, expect, it } from "vitest";

const text = readFileSync("examples/hall-napkins/job.yaml", "utf8");
const reading = readJob(text);
if (!reading.ok) throw new Error("the job of the napkins cannot be read");
const printed = planText(planWarp(reading.job));

describe("the printed plan of the napkins", () => {
  const lines = printed.split("\n");

  it.each([
    // 24 + 2 × (40 + 3 × (12 + 6) + 66) + 24 = 368 ends; 10 dents × 2.
    "368 ends at 20 ends/in.",
    // 368 ÷ 20; 18.4 × 0.85.
    "Width in the reed: 18.4 in, by the tape about 18 3/8 in.",
    "Finished width: 15.64 in, by the tape about 15 5/8 in.",
    // 9 × (16 + 2 × 3/4) = 157.5; ÷ 0.9 = 175; ÷ 0.92 = 190.217; + 10 = 200.217 in; ÷ 36 = 5.5616 yd.
    "Warp for 9 pieces: 200.217 in, by the tape rounded up to 200 1/4 in.",
    "Wind 5.57 yd to each end.",
    // 368 × 18 in = 6624 in = 184 yd.
    "The old warp stands in for 18 in of waste at the back: 184 yd of yarn need not",
    // 14 ÷ 2 = 7 m to the gram, 142.857 tex; 8 ÷ 2 = 4 hanks of 840 yd to the pound, 147.637 tex; 0.9676 of it.
    "  CHECK, indigo: The new yarn is lighter, about 97 % of the old weight for its",
    // 9 × 17.5 × 1.18 + 10, the hundredths added up instead of divided out.
    "Added up instead of divided out, the percentages give 195.85 in, by the tape",
    // 252 × 5.56159 = 1401.52 yd; 175 in × 18 picks × 18.4 in = 57,960 in = 1610 yd; 3011.52 ÷ 3360 × 16 = 14.3406 oz.
    "natural   252  1401.53 yd  1610 yd  3011.53 yd  14.35 oz",
    // 14.3406 − 6 = 8.3406; 16 − 8.3406 = 7.6594.
    "natural  6 oz     8.35 oz  2 of 8 oz  7.65 oz",
    // 20 g × 7 m = 140 m; ÷ 36 = 3.8889 m = 4.2530 yd.
    "The indigo on hand allows a warp of 4.25 yd with these stripes.",
    // 17.5 ÷ 0.9 = 19.4444, eight of them 155.5556.
    "    8  155.556 in, by the tape about 155 1/2 in  ______",
    // 252 ÷ 4, 80 ÷ 4, 36 ÷ 4: every stripe but the indigo is whole repeats, and those come in pairs.
    "    1    92  63 natural, 20 madder, 9 indigo",
    // 1.6 mm ÷ (25.4 ÷ (28 √4)) = 3.5276 threads; 0.7 and 1.3 of it.
    "  Knots in natural and madder: A dent is 3.5 threads wide, between 2.5 and 4.6",
    // 80 × 5.56159 = 444.93 yd; ÷ 3360 = 0.132419 lb = 2.1187 oz; 8 − 2.1187 = 5.8813.
    "madder     80  444.93 yd   0 yd     444.93 yd   2.12 oz",
    "madder   0 oz     2.12 oz  1 of 8 oz  5.88 oz",
    // 36 × 5.08552 m = 183.079 m; ÷ 7 m/g = 26.154 g; less 20 g on hand 6.154; 50 − 6.154 = 43.846.
    "indigo     36  200.22 yd   0 yd     200.22 yd   26.16 g",
    "indigo   20 g     6.16 g   1 of 50 g  43.84 g",
    // The sixth edge is end 100: dent 50, and 100 = 25 × 4, on shaft 4; 6 ends are not cut.
    "[ ] 7   95 to 100   indigo   6      4      50    STRIPE ENDS  old ____ new ____",
    // The last of the last stripe: end 368, dent 184, shaft 4.
    "[ ] 24  345 to 368  natural  24     4      184   STRIPE ENDS  old ____ new ____",
  ])("has the line %s", (line) => {
    expect(lines).toContain(line);
  });
});

describe("the program", () => {
  const run = (file: string): ReturnType<typeof spawnSync> =>
    spawnSync(process.execPath, ["plan.mjs", file], { cwd: "examples/hall-napkins", encoding: "utf8" });

  it("prints the plan on standard output and nothing else", () => {
    const { status, stdout, stderr } = run("job.yaml");
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toBe(`${printed}\n`);
  });

  it("answers a faulty job with all its faults, exits with 1 and writes nothing", () => {
    const folder = mkdtempSync(join(tmpdir(), "thrum-"));
    const file = join(folder, "faulty.yaml");
    writeFileSync(file, text.replace("number: 9", "number: 0").replace("endOneOn: left", "endOneOn: up"));
    const { status, stdout, stderr } = run(file);
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
    expect(String(stderr).trim().split("\n")).toHaveLength(2);
    expect(readdirSync(folder)).toEqual(["faulty.yaml"]);
  });
});
