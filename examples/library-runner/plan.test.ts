import { readFileSync } from "node:fs";
import { planText, planWarp, readJob } from "@thrum/plan";
import { describe, expect, it } from "vitest";

const reading = readJob(readFileSync("examples/library-runner/job.yaml", "utf8"));
if (!reading.ok) throw new Error("the job of the runners cannot be read");
const { job } = reading;
const lines = planText(planWarp(job)).split("\n");

describe("runners wider than the warp before them", () => {
  it.each([
    // 264 − 240 = 24, half at each side: 12 ends, 3 on each of 4 shafts, 6 dents.
    "  CHECK: Add 12 ends before end 1 and 12 ends after the last.",
    // 36 + 4 × (30 + 24) + 12 = 264 ends; 12 dents × 2.
    "264 ends at 24 ends/in.",
    // 264 ÷ 24; 11 × 0.86.
    "Width in the reed: 11 in.",
    "Finished width: 9.46 in, by the tape about 9 1/2 in.",
    // 3 × (54 + 2 × 1) = 168; ÷ 0.91 = 184.615; ÷ 0.93 = 198.511; + 9 = 207.511 in; ÷ 36 = 5.7642 yd.
    "Warp for 3 pieces: 207.511 in, by the tape rounded up to 207 5/8 in.",
    "Wind 5.77 yd to each end.",
    // 168 × 1.16 + 9, the hundredths added up instead of divided out.
    "Added up instead of divided out, the percentages give 203.88 in, by the tape",
    // 264 × 20 in = 5280 in = 146.667 yd.
    "The old warp stands in for 20 in of waste at the back: 146.67 yd of yarn need",
    // 36 + 4 × 24 + 12 = 144; 144 × 5.7642 = 830.04; 184.615 × 22 × 11 = 44676.9 in = 1241.03 yd; ÷ 4200 × 16 = 7.8898 oz.
    "slate   144  830.05 yd  1241.03 yd  2071.08 yd  7.89 oz",
    // 4 × 30 × 5.7642 = 691.70 yd; ÷ 4200 × 16 = 2.6351 oz; − 2 = 0.6351; 4 − 0.6351 = 3.3649.
    "cream   120  691.71 yd  0 yd        691.71 yd   2.64 oz",
    "cream  2 oz     0.64 oz  1 of 4 oz  3.36 oz",
    // 7.8898 − 6 = 1.8898; 8 − 1.8898 = 6.1102.
    "slate  6 oz     1.89 oz  1 of 8 oz  6.11 oz",
    // 6 oz = 1575 yd; − 1241.03 for the weft = 333.97; ÷ 144 = 2.3193 yd.
    "The slate on hand allows a warp of 2.31 yd with these stripes.",
    // 60 % of 25.4 ÷ 12 = 1.27 mm; a thread is 25.4 ÷ (28 √5) = 0.40569 mm; 1.27 ÷ 0.40569 = 3.13.
    "    pitch is taken, as for power-loom reeds. A dent is 3.1 threads wide, between",
    // Stripe 2 is ends 37 to 66, cut at 60: dent 33; 66 = 16 × 4 + 2, on shaft 2.
    "[ ] 4   61 to 66    cream   6      2      33    STRIPE ENDS  old ____ new ____",
    // 144 ÷ 4 = 36, 120 ÷ 4 = 30.
    "    1    66  36 slate, 30 cream",
    // 56 ÷ 0.91 = 61.538, three of them 184.615.
    "    3  184.615 in, by the tape about 184 5/8 in  ______",
  ])("have the line %s", (line) => {
    expect(lines).toContain(line);
  });

  it("cannot be tied on with one heddle fewer on one shaft, and say so first of all", () => {
    const { spareHeddles } = job.oldWarp;
    const short = { ...job.oldWarp, spareHeddles: { ...spareHeddles, beforeFirst: [3, 2, 3, 3] } };
    const plan = planWarp({ ...job, oldWarp: short });
    expect(plan.fit.verdict).toBe("does not fit");
    expect(planText(plan).indexOf("MUST")).toBeLessThan(planText(plan).indexOf("COUNT THE OLD WARP"));
  });
});
