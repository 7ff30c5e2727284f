import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { planText, planWarp, readJob } from "@thrum/plan";
import { describe, expect, it } from "vitest";

const reading = readJob(readFileSync("examples/room-cushions/job.yaml", "utf8"));
if (!reading.ok) throw new Error("the job of the cushions cannot be read");
const lines = planText(planWarp(reading.job)).split("\n");

describe("cushions planned again with what was found", () => {
  it.each([
    // 4 × (15 + 2 × 1 1/2) = 72; ÷ 0.9 = 80; ÷ 0.94 = 85.106; + 9 = 94.106 in.
    "Warp for 4 pieces: 94.106 in, by the tape rounded up to 94 1/8 in.",
    // 80 in × 15 picks found, not the 14 planned, × 16 in = 19200 in = 533.33 yd; 6 × 560 = 3360 yd/lb; 2.5397 oz.
    "heather     0  0 yd       533.34 yd  533.34 yd  2.54 oz",
    // (16 − 15.25) ÷ 16 = 4.6875 %.
    "4.7 % of that.",
    // (50 − 9) × 0.94 = 38.54 in of cloth; ÷ 20 = 1.927.
    "What is left of the warp is enough for 1 more of these pieces.",
    // 1.5 ÷ 21.5; 0.75 ÷ 20; 2.5 ÷ 20.
    "warp taken up in weaving  21.5 in   20 in     7.0 %   newWarp.takeUp",
    "length, off the loom      20 in     19.25 in  3.8 %",
    "length in all             20 in     17.5 in   12.5 %  pieces.loomToFinished",
    // 0.25 ÷ 15.25 = 1.639 %; 2.25 ÷ 16 = 14.0625 %.
    "width, off the loom       15.25 in  15 in     1.6 %",
    "  newWarp.takeUp: 6.98 % lost",
    "  pieces.widthReedToFinished: 14.06 % lost",
    // 192 × 2.614066 yd ÷ 3360 × 16 = 2.39 oz; ÷ 8 × 12 = 3.585; 64 ends: 0.79667 oz ÷ 8 × 12.80 = 1.2747.
    "yarn: ecru, waste in it     3.59 EUR",
    "yarn: rust, waste in it     1.27 EUR",
    // 2.53968 ÷ 4 × 16 = 10.1587; 11 × 14 = 154.
    "yarn: heather, waste in it  10.16 EUR",
    "work, finishing in it       154.00 EUR",
    // 3.5850 + 1.2747 + 10.1587 + 154 + 18 = 187.0184; ÷ 4 = 46.7546; ÷ 0.65 = 71.9302.
    "One of 4 costs 46.76 EUR. Below 71.94 EUR it is sold at a loss once the seller",
    // Cotton 256 × 85.106 ÷ 36 = 605.2 yd = 0.18012 lb, dry ÷ 1.085 = 0.16601; wool 0.15873 lb, dry ÷ 1.17 = 0.13567.
    // 0.16601 ÷ 0.30168 = 55.03 %; 0.18012 ÷ 0.33885 = 53.16 %.
    "cotton  0.19 lb        55.0 %       53.2 %",
    "wool    0.16 lb        45.0 %       46.8 %",
  ])("have the line %s", (line) => {
    expect(lines).toContain(line);
  });

  it("need a longer warp by what the first one really lost", () => {
    const { status, stdout, stderr } = spawnSync(process.execPath, ["fed-back.mjs", "job.yaml"], {
      cwd: "examples/room-cushions",
      encoding: "utf8",
    });
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    const differences = stdout.split("\n").map((line) => line.split(/ {2,}/u));
    // 72 ÷ 0.875 = 82.286; ÷ (20 ÷ 21.5) = 88.457; + 9 = 97.457 in; 16 × 13.75 ÷ 16 = 13.75 in.
    expect(differences).toContainEqual(["warp", "94.106 in", "97.457 in"]);
    expect(differences).toContainEqual(["finished width", "14.08 in", "13.75 in"]);
    // 82.2857 × 15 × 16 in = 548.57 yd.
    expect(differences).toContainEqual(["heather: yarn", "533.34 yd", "548.58 yd"]);
  });
});
