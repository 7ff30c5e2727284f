import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";

const printed = (seed: string): string => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ["sheet.mjs", seed], {
    cwd: "examples/classroom",
    encoding: "utf8",
  });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  return stdout;
};

describe("a sheet printed for a class", () => {
  const [sheet = "", key = ""] = printed("1").split("\nKey\n");

  it("asks six sums, each percentage with what it was measured on, and gives no answer away", () => {
    expect(sheet).toContain("loom to finished: 14 % of what was there before");
    expect(sheet).toContain("Write the answer to 3 decimals, halves up, in yards.");
    expect(sheet.match(/^Sum \d, /gmu)).toHaveLength(6);
    expect(sheet).not.toContain("gives this");
  });

  it("has a key with the answer and what each slip would give", () => {
    // (10 × 20.5 ÷ 0.86 ÷ 0.88 + 25.5) ÷ 36; the same with × 1.14 for ÷ 0.86.
    expect(key).toContain("Key to warp length, sheet version 2, seed 1: 8.233 yd.");
    expect(key).toContain("8.085 yd: a sum that adds the 14 % of loom to finished instead of dividing it out");
  });

  it("is of one warp: what a sum gives goes into the next", () => {
    // 19 ÷ 0.94 = 20.21 in; 19 × 20.21 − 1 = 382.99, 48 repeats of 8 and 1: 385 ends.
    expect(sheet.match(/width in reed: 20\.21 in/gu)).toHaveLength(2);
    expect(sheet).toContain("ends: 385, of this yarn");
    expect(sheet).toContain("warp length: 8.233 yd, of every end, loom waste counted in; the answer of sum 3");
    // (18 + 2.5) ÷ 0.86 = 23.837 in of one napkin.
    expect(sheet).toContain("woven length: 23.84 in");
  });

  it("is another for another seed", () => {
    expect(printed("2").split("\nKey\n")[0]).not.toBe(sheet);
  });
});
