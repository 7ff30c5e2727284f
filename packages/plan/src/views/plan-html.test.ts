import { describe, expect, it } from "vitest";
import { examplePlans } from "#ci/example-plans.js";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import type { PlanData } from "../data/plan-data.js";
import { planJson } from "../data/plan-json.js";
import { planWarp } from "../data/plan-warp.js";
import type { Job } from "../job/job.js";
import { planHtml } from "./html.js";
import { signsOf } from "./signs.js";
import { planText } from "./text.js";

describe("a page of a plan", () => {
  it("takes nothing from a job for markup, and nothing from outside", () => {
    const name = "<b onclick=x>";
    const page = planHtml(
      planWarp(
        jobIn(
          `title: "</title><script>alert(1)</script>"\nstripes: ['4 ${name}', "8 a&b'c"]\ncloth: { sett: 8 per inch }\n`,
        ),
      ),
    );
    expect(page).not.toContain("<script");
    expect(page).not.toContain(name);
    expect(page).toContain("&#60;b onclick=x&#62;");
    expect(page).toContain("a&#38;b&#39;c");
    expect(page).toContain('content="default-src &#39;none&#39;; style-src &#39;unsafe-inline&#39;"');
    expect(page).not.toMatch(/(?:src|href)=|url\((?!#hatch-)|@import/u);
  });

  it("has the sections of the text, the workings only where they are wanted", () => {
    const plan = planWarp(jobIn(exampleText("2-hall-napkins")));
    const page = planHtml(plan, { without: "workings" });
    const headings = [...page.matchAll(/<h2[^>]*>([^<]*)<\/h2>/gu)].map(([, heading = ""]) => heading.toUpperCase());
    const lines = planText(plan, { without: "workings" }).split("\n");
    expect(headings.length).toBeGreaterThan(12);
    for (const heading of headings) expect(lines).toContain(heading);
    expect(page).not.toContain("Workings");
    expect(planHtml(plan)).toContain("Workings and sources");
  });

  it.each(examplePlans)("%s: is the same page of a copy", (_, plan) => {
    const page = planHtml(plan);
    expect(planHtml(structuredClone(plan))).toBe(page);
    expect(planHtml(JSON.parse(planJson(plan)) as PlanData)).toBe(page);
  });

  it("draws no tape of a piece of 100 km, and answers", () => {
    const job =
      "stripes: 4 x\ncloth: { sett: 4 per cm, lengthLoomToFinished: 1 % lost }\npieces: [{ number: 2, finishedLength: 100000 m }]\n";
    const page = planHtml(planWarp(jobIn(job)));
    expect(page).toContain("wants a measuring tape");
    expect(page.length).toBeLessThan(200_000);
  });
});

describe("the signs of colours", () => {
  const job = (seen: Readonly<Record<string, string | undefined>>): Job => ({
    yarns: Object.fromEntries(
      Object.entries(seen).map(([name, colour]) => [name, colour === undefined ? {} : { seen: colour }]),
    ),
  });

  // Ten hatches: the middle of three stands at 9 ÷ 2, a half up.
  it("never draw black white, nor white black", () => {
    const signs = signsOf(["black", "white", "red"], job({ black: "#101010", white: "#f4efe4", red: "#8e3b32" }));
    expect(["white", "red", "black"].map((name) => signs.get(name)?.hatch)).toEqual(["white", "crossed", "black"]);
    const unseen = signsOf(["black", "white"], job({ black: undefined, white: undefined }));
    for (const { hatch } of unseen.values()) expect(["white", "black"]).not.toContain(hatch);
  });

  it("grow darker with the colours seen", () => {
    const names = ["a", "b", "c", "d"];
    const signs = signsOf(names, job({ a: "#202020", b: "#e0e0e0", c: "#808080", d: "#b0b0b0" }));
    const order = [
      "white",
      "dotted",
      "level",
      "rising",
      "falling",
      "crossed",
      "close-level",
      "close-rising",
      "close-falling",
      "black",
    ];
    const darkness = ["b", "d", "c", "a"].map((name) => order.indexOf(signs.get(name)?.hatch ?? ""));
    expect(darkness).toEqual([...darkness].sort((one, other) => one - other));
    expect(new Set(darkness).size).toBe(4);
  });

  it("give each yarn a letter of its own", () => {
    const signs = signsOf(["plum", "pink", "pale", "p"], {});
    expect(new Set([...signs.values()].map(({ letter }) => letter)).size).toBe(4);
  });
});
