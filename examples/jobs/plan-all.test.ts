import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";

const { status, stdout, stderr } = spawnSync(process.execPath, ["plan-all.mjs"], {
  cwd: "examples/jobs",
  encoding: "utf8",
});
const told = stdout.split("\n").map((line) => line.split(";")[0]);

describe("the nine jobs", () => {
  it("are read without a fault and planned", () => {
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  });

  it.each([
    // 24 + 40 + 8 + 12 + 8 + 40 + 24; nothing is known of a warp.
    "1-smallest.yaml: 156 ends, warp not known yet",
    // 24 + 2 × (40 + 3 × (12 + 6) + 66) + 24; 9 × 17.5 ÷ 0.9 ÷ 0.92 + 10 = 4605/23 = 200.2174 in.
    "2-hall-napkins.yaml: 368 ends, 200.22 in",
    // 20 + 4 × (48 + 24 + 9 + 19) + 20; fifteen yards were given.
    "3-blended-towels.yaml: 440 ends, 15 yd",
    // 20 + 5 × 36 + 16 + 20; 3 × 180 ÷ 0.91 ÷ 0.93 + 72 + 45 = 755.073 cm.
    "4-scarves.yaml: 236 ends, 755.08 cm",
    // 32 + 4 × 68; 2 × (54 + 4) ÷ 0.92 ÷ 0.95 + 9 = 61933/437 = 141.7231 in.
    "5-crammed-stripe.yaml: 304 ends, 141.73 in",
    // 40 + 4 × 54 + 8; 3 × 56 ÷ 0.91 ÷ 0.93 + 9 = 207.5112 in.
    "6-wider-runner.yaml: 264 ends, 207.52 in",
    // 64 + 6 × 42 + 54; lengths are not written.
    "7-warp-with-faults.yaml: 370 ends, warp not known yet",
    // Solved from 360 places: 165126/517 = 319.3926 in.
    "8-blankets.yaml: 360 ends, 319.4 in",
    // 8 × 32; five covers: 5 × 35 ÷ 0.9 ÷ 0.94 + 9 = 91307/423 = 215.8558 in.
    "9-yarn-on-hand.yaml: 256 ends, 215.86 in",
  ])("come to %s", (line) => {
    expect(told).toContain(line);
  });
});
