import { readFileSync } from "node:fs";
import { planText, planWarp, readJob } from "@thrum/plan";
import { describe, expect, it } from "vitest";

const reading = readJob(readFileSync("examples/bread-bags/job.yaml", "utf8"));
if (!reading.ok) throw new Error("the job of the bread bags cannot be read");
const text = planText(planWarp(reading.job));
const lines = text.split("\n");

describe("bread bags in metric counts, tied behind the heddles", () => {
  it.each([
    // 2 × (64 + 16 + 48 + 32) = 320 ends; 40 dents on 10 cm × 2 = 8 on a centimetre.
    "320 ends at 8 ends/cm.",
    // 320 ÷ 8; 40 × 0.89.
    "Width in the reed: 40 cm.",
    "Finished width: 35.6 cm.",
    // 12 × (65 + 2 × 4) = 876; ÷ 0.92 = 952.174; ÷ 0.94 = 1012.951; + 50 = 1062.951 cm.
    "Warp for 12 pieces: 1062.951 cm, by the tape rounded up to 1063 cm.",
    "Wind 10.63 m to each end.",
    // 876 × 1.14 + 50, the hundredths added up instead of divided out.
    "Added up instead of divided out, the percentages give 1048.64 cm, by the tape",
    // 320 × 25 cm = 80 m, at the front: the old ends come out on the front rod.
    "The old warp stands in for 25 cm of waste at the front: 80 m of yarn need not be",
    // 2 × 112 = 224; × 10.62951 m = 2381.01; 952.174 × 7 × 40 cm = 2666.09 m; 5047.10 ÷ 17 m/g = 296.89 g.
    "flax   224  2381.02 m  2666.09 m  5047.1 m   296.89 g",
    // 296.888 − 100 = 196.888; 250 − 196.888 = 53.112.
    "flax  100 g    196.89 g  1 of 250 g  53.11 g",
    // 2 × 48 = 96; × 10.62951 = 1020.43 m; at 2 × 30 tex, 60 g to the kilometre, 61.226 g; − 20 = 41.226; 100 − 41.226 = 58.774.
    "blue    96  1020.44 m  0 m        1020.44 m  61.23 g",
    "blue  20 g     41.23 g   1 of 100 g  58.77 g",
    // 20 g at 60 tex are 333.33 m; ÷ 96 = 3.4722.
    "The blue on hand allows a warp of 3.47 m with these stripes.",
    // 17 m to the gram are 58.8235 tex; 60 ÷ 58.8235 = 1.02.
    "  CHECK, blue: The new yarn is heavier, about 102 % of the old weight for its",
    // 8 ends on a centimetre, 16 on two.
    "40 cm    16     320",
    // 64 ends of flax in three groups, then the first blue stripe, ends 65 to 80: dent 40, ten whole repeats of 8.
    "[ ] 4   65 to 80    blue    16     8      40    STRIPE ENDS  old ____ new ____",
    // 224 ÷ 8 = 28, 96 ÷ 8 = 12.
    "    8    40  28 flax, 12 blue",
    // 73 ÷ 0.92 = 79.348.
    "    1  79.348 cm, by the tape about 79.3 cm    ______",
  ])("have the line %s", (line) => {
    expect(lines).toContain(line);
  });

  it("are beamed before they are tied, end 1 at the right of a weaver who sits behind", () => {
    expect(text.indexOf("\nRADDLE")).toBeLessThan(text.indexOf("\nJOINING"));
    expect(text).toContain("Begin at end 1, at your right");
  });
});
