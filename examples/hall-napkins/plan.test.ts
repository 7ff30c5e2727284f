import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { grams, inches, ounces, yards } from "@thrum/maths";
import { planText, planWarp, readJob } from "@thrum/plan";
import { describe, expect, it } from "vitest";

const text = readFileSync("examples/jobs/2-hall-napkins.yaml", "utf8");
const reading = readJob(text);
if (!reading.ok) throw new Error("the job of the napkins cannot be read");
const plan = planWarp(reading.value);
const printed = planText(plan);
const { loom, piece, tying, warp, winding, yarn } = plan.figures;

describe("the figures of the napkins", () => {
  it.each<readonly [string, number | null | undefined, number]>([
    // 24 + 2 × (40 + 3 × (12 + 6) + 66) + 24.
    ["ends", loom.ends.value, 368],
    ["dents", loom.dents.value, 184],
    // 184 ÷ 10; 18.4 × 0.85.
    ["width in the reed", loom.widthInReed.value?.in(inches), 18.4],
    ["finished width", loom.finishedWidth.value?.in(inches), 15.64],
    // 9 × (16 + 2 × 3/4) = 157.5; ÷ 0.9 = 175; ÷ 0.92 + 10 = 4605/23.
    ["woven in all", warp.woven.value?.in(inches), 175],
    ["warp", warp.length.value?.in(inches), 4605 / 23],
    // 17.5 ÷ 0.9; 350 picks at 18 to the inch.
    ["one napkin on the loom", piece["1"]?.woven.value?.in(inches), 175 / 9],
    ["picks of one", piece["1"]?.picksInAll.value, 350],
    // 254 ends × 4605/23 ÷ 36 + 350 × 9 × 18.4 × 1.05 ÷ 36 yd.
    ["yards of natural", yarn["natural"]?.inAll.value?.in(yards), 214117 / 69],
    // 80 × 4605/23 ÷ 36; 37 × 4605/23 ÷ 36.
    ["yards of madder", yarn["madder"]?.inAll.value?.in(yards), 30700 / 69],
    ["yards of indigo", yarn["indigo"]?.inAll.value?.in(yards), 56795 / 276],
    // 214117/69 ÷ 3360 × 16 − 6; 56795/276 × 0.9144 ÷ 7 − 20, at 14 ÷ 2 = 7 m to the gram.
    ["natural missing", yarn["natural"]?.missing.value?.in(ounces), (214117 / 69 / 3360) * 16 - 6],
    ["indigo missing", yarn["indigo"]?.missing.value?.in(grams), ((56795 / 276) * 0.9144) / 7 - 20],
    ["packages of natural", yarn["natural"]?.packages.value, 2],
    ["packages of madder", yarn["madder"]?.packages.value, 1],
    ["packages of indigo", yarn["indigo"]?.packages.value, 1],
    // Groups of 24 at most, begun afresh at each of 17 stripes: 1 + 2 + 6 + 6 + 6 + 2 + 1.
    ["groups", tying.groups.value?.length, 24],
    ["knots", tying.knots.value, 368],
    ["chains", winding.chains.value?.chains.length, 3],
  ])("%s", (_name, value, byHand) => {
    expect(value).toBeCloseTo(byHand, 10);
  });
});

describe("the printed plan of the napkins", () => {
  const lines = printed.split("\n").map((line) => line.replace(/ {2,}/gu, "  ").trim());

  it.each([
    "368 ends in 184 dents, 20 ends per inch in the mean.",
    // 200.217 in is rounded up to the eighth of the tape; ÷ 36 = 5.5616 yd.
    "Wind 5.57 yd to each end (200 1/4 in).",
    // 252 ÷ 4, 80 ÷ 4, 36 ÷ 4: every stripe but the indigo is whole repeats, and those come in pairs.
    "[ ]  1  92  63 natural, 20 madder, 9 indigo",
    // The sixth edge is end 100: dent 50, and 100 = 25 × 4, on shaft 4.
    "[ ]=  7  95–100  indigo  6  4  50  ______  ______  95",
  ])("has the line %s", (line) => {
    expect(lines).toContain(line);
  });
});

describe("the program", () => {
  const run = (file: string): ReturnType<typeof spawnSync> =>
    spawnSync(process.execPath, ["plan.mjs", file], { cwd: "examples/hall-napkins", encoding: "utf8" });

  it("prints the plan on standard output and nothing else", () => {
    const { status, stdout, stderr } = run("../jobs/2-hall-napkins.yaml");
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
