import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { planWarp } from "../data/plan-warp.js";
import type { PlanData } from "../data/plan-data.js";
import type { Job } from "../job/job.js";
import { sectionsOf } from "./section.js";
import { planText } from "./text.js";

const plan = (text: string): PlanData => planWarp(jobIn(text));
const examples = readdirSync("examples/jobs").filter((file) => file.endsWith(".yaml") && !file.includes("progress"));
const sectionIn = (text: string, heading: string): string => {
  const lines = text.split("\n");
  const from = lines.indexOf(heading.toUpperCase());
  const to = lines.findIndex((line, at) => at > from && line === "");
  return lines.slice(from + 1, to < 0 ? undefined : to).join("\n");
};

describe("the smallest job, written out by hand", () => {
  const text = planText(
    plan(
      "stripes: [24 oat, { mirror: [40 rose, 8 oat, 12 slate], middle: once }, 24 oat]\ncloth: { sett: 16 per inch }\n",
    ),
    {
      without: "workings",
    },
  );

  it("prints its stripes in letters and how many ends there are of each", () => {
    // 24 + 40 + 8 + 12 + 8 + 40 + 24 = 156; oat 24 + 8 + 8 + 24, rose 40 + 40.
    expect(sectionIn(text, "Stripes")).toBe(
      [
        "156 ends, from end 1:",
        "24 O | 40 R | 8 O | 12 S | 8 O | 40 R | 24 O",
        "(O oat, R rose, S slate)",
        "Ends of each yarn",
        "yarn   ends",
        "oat      64",
        "rose     80",
        "slate    12",
      ].join("\n"),
    );
  });

  it("gives the width, 156 ÷ 16 = 9 3/4 in, and asks for what is missing", () => {
    expect(text).toContain("Width in the reed: 9 3/4 in.");
    expect(text).toContain(
      "WAITS  Width and length: cloth.widthReedToFinished, pieces, cloth.takeUp,\n       join.knots.",
    );
    expect(text.split("\n")[0]).toBe("A warp");
  });

  it("leaves out the pages that say nothing of it", () => {
    for (const heading of [
      "COUNT OF THE OLD WARP",
      "BEFORE CUTTING",
      "JOINING LIST",
      "SHAFT CHECK",
      "COST AND LEAST PRICE",
    ])
      expect(text.split("\n")).not.toContain(heading);
  });
});

describe("the hall napkins", () => {
  const napkins = plan(exampleText("2-hall-napkins"));
  const text = planText(napkins);

  it("rounds what is needed up and what is spared down, as a scale and a tape show it", () => {
    // 214117/69 yd = 3103.1449…, 4605/23 in = 200.217…; 30700/69 yd at 3360 yd to the pound = 2.1187 oz.
    expect(sectionIn(text, "Yarn")).toMatch(/natural +254 +1412\.65 yd +3103\.15 yd +14\.8 oz/u);
    expect(sectionIn(text, "Yarn")).toMatch(/madder +80 +444\.93 yd +444\.93 yd +2\.2 oz/u);
    expect(sectionIn(text, "Width and length")).toContain("Wind 5.57 yd to each end (200 1/4 in).");
    // 36 − 20 g wanting of 26.88… g, and 70 g − 26.88… g over.
    expect(sectionIn(text, "Yarn")).toMatch(/indigo +20 g +6\.9 g +1 +50 g +43\.1 g/u);
  });

  it("counts first, cuts after", () => {
    const headings = sectionsOf(napkins).sections.map(({ heading }) => heading);
    const at = [
      "Stripes",
      "Count of the old warp",
      "Winding list",
      "Before cutting",
      "Laying the chains",
      "Joining list",
      "Shaft check",
      "Piece tape",
      "Record",
      "Workings and sources",
    ].map((one) => headings.indexOf(one));
    expect(at).not.toContain(-1);
    expect(at).toEqual([...at].sort((a, b) => a - b));
  });

  it("names the group, the shaft and the dent at every edge, and where a miscount lies", () => {
    // Group 9: 6 indigo, ends 113–118, in the dent 118 ÷ 2 = 59, 118 = 29 × 4 + 2 on shaft 2.
    expect(sectionIn(text, "Joining list")).toMatch(/\[ \]= +9 +113–118 +indigo +6 +2 +59 .* 113\n/u);
    // Group 15 ends the middle stripe, which begins at 119.
    expect(sectionIn(text, "Joining list")).toMatch(/\[ \]= +15 +239–250 +natural +12 +2 +125 .* 119\n/u);
  });

  it("gives each working once, at the back, and none on request", () => {
    const workings = text.slice(text.indexOf("WORKINGS AND SOURCES"));
    const parts = workings.split("\n\n").map((part) => part.slice(part.indexOf("\n")));
    expect(new Set(parts).size).toBe(parts.length);
    expect(planText(napkins, { without: "workings" })).not.toContain("Source:");
  });
});

it.each(examples)("%s prints alike from a copy, in lines of 80, no maker's name among its steps", (file) => {
  const made = plan(exampleText(file.replace(".yaml", "")));
  const text = planText(made);
  expect(planText(structuredClone(made))).toBe(text);
  const copied: PlanData = JSON.parse(JSON.stringify(made)) as PlanData;
  expect(planText(copied)).toBe(text);
  expect(text.split("\n").filter((line) => line.length > 80)).toEqual([]);
  const safety = text.split("\n").filter((line) => line.startsWith("CAUTION"));
  expect(new Set(safety).size).toBe(safety.length);
});

it("keeps a title that would take the terminal over on its line", () => {
  const made = plan('title: "a\\e[2Jb\\u202Ec\\nd"\nstripes: 4 x\n');
  const text = planText(made);
  expect(text).not.toMatch(/[\u001B\u202E]/u);
  expect(text.split("\n")[0]).toBe("a [2Jb c d");
});

describe("what do I do now?", () => {
  const seats = [
    ["in front of the reed", null, "left", "left"],
    ["in front of the reed", null, "right", "right"],
    ["behind the reed", "back of the loom", "left", "left"],
    ["behind the reed", "back of the loom", "right", "right"],
    ["behind the reed", "front of the loom", "left", "right"],
    ["behind the reed", "front of the loom", "right", "left"],
    ["behind the heddles", null, "left", "right"],
    ["behind the heddles", null, "right", "left"],
  ] as const;
  const doing =
    /^(Begin|Beam|Count|Cut|Draw|Ease|Fasten|Hang|Keep|Label|Lay|Lift|Lock|Look|Make|Measure|Pick|Pull|Put|Sley|Stop|Take|Thread|Tie|Trim|Untie|Weave|While|Wind|Write)/u;

  it.each(seats)("knots %s, facing the %s, end 1 on the %s: every step says it", (knots, faces, endOneOn, atYour) => {
    const job = jobIn(exampleText("2-hall-napkins"));
    const sat: Job = {
      ...job,
      loom: { ...job.loom, endOneOn },
      join: { ...job.join, knots, ...(faces === null ? {} : { faces }) },
      winding: { ...job.winding },
    };
    const { sections } = sectionsOf(planWarp(sat));
    const steps = sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.is === "says" && block.as === "step" ? [block.says.map(String).join("")] : [])),
    );
    expect(steps.length).toBeGreaterThan(20);
    for (const one of steps) expect(one).toMatch(doing);
    const text = planText(planWarp(sat));
    expect(text).toContain(`End 1 is at your ${atYour} as you sit.`);
    expect(text).not.toContain(`End 1 is at your ${atYour === "left" ? "right" : "left"} as you sit.`);
    const order = (...lines: readonly string[]): void => {
      const flat = text.replace(/\n +/gu, " ");
      const at = lines.map((line) => flat.indexOf(line));
      expect(at).not.toContain(-1);
      expect(at).toEqual([...at].sort((a, b) => a - b));
    };
    if (knots === "in front of the reed")
      order("Tie the back rod up", "Cut in front of the reed", "sticks out", "Trim");
    if (knots === "behind the reed")
      order(
        "lease stick",
        "Tie the two sticks to each other",
        "Ease the tension",
        "Tie the back rod up",
        "Cut behind the reed",
        "sticks out",
        "Trim",
        "Ease the knots",
      );
    if (knots === "behind the heddles")
      order(
        "lease stick",
        "Tie the two sticks to each other",
        "Ease the tension",
        "Cut behind the lease sticks",
        "Beam the new warp now",
        "Lay paper",
        "JOINING LIST",
        "sticks out",
        "Pull the knots forward",
      );
    expect(text).toContain("tug each knot");
    expect(text).toContain("Keep a finger between");
  });
});
