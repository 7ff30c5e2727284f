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

  it("asks five sums, each percentage with what it was measured on, and gives no answer away", () => {
    expect(sheet).toContain("loom to finished: 11 % of what was there before");
    expect(sheet).toContain("Write the answer to 3 decimals, halves up, in yd.");
    expect(sheet.match(/^\d\. /gmu)).toHaveLength(5);
    expect(sheet).not.toContain("gives this");
  });

  it("has a key with the answer and what each slip would give", () => {
    // (13 × 34.5 ÷ 0.89 ÷ 0.85 + 23) ÷ 36; the same with × 1.11 for ÷ 0.89.
    expect(key).toContain("Key to warp length, sheet version 1, seed 1: 17.107 yd.");
    expect(key).toContain("16.908 yd: a sum that adds the 11 % of loom to finished instead of dividing it out");
    expect(key).toContain("= 305 ends");
  });

  it("is another for another seed", () => {
    expect(printed("2").split("\nKey\n")[0]).not.toBe(sheet);
  });
});
