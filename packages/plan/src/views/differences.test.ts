import { describe, expect, it } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { planWarp } from "../data/plan-warp.js";
import type { PlanData } from "../data/plan-data.js";
import { planDifferencesHtml, planDifferencesText } from "./differences.js";

function planned(text: string): PlanData {
  return planWarp(jobIn(text));
}

const napkins = exampleText("2-hall-napkins");
const before = planned(napkins);
// Two pieces fewer: 200.217 − 2 × 21.135 in of warp; what is short falls with it.
const after = planned(napkins.replace("number: 9", "number: 7").replace("title: Striped", "title: Fewer"));

describe("two plans side by side", () => {
  it("tell in text what is wound and what is short, no figure of nothing but noughts", () => {
    const text = planDifferencesText(before, after);
    // 4605/23 in, and 4605/23 − 2 × (175/9 ÷ 0.92) = 157.95 in.
    expect(text).toMatch(/warp to wind +200 1\/4 in +158 in/u);
    expect(text).toMatch(/natural: missing +8\.8 oz +\d/u);
    expect(text).not.toContain("0 lb");
    for (const line of text.split("\n").slice(1)) expect(line).not.toMatch(/ (\S+ \S+) +\1$/u);
  });

  it("are a page of the same rows under both titles, which needs nothing else", () => {
    const page = planDifferencesHtml(before, after);
    const rows = planDifferencesText(before, after).split("\n").length - 1;
    expect(page.match(/<tr class="within">/gu)).toHaveLength(rows);
    expect(page).toContain("First: Striped napkins for the village hall.");
    expect(page).toContain("Second: Fewer napkins for the village hall.");
    expect(page).not.toMatch(/<script|(?:src|href)=/u);
  });

  it("say so where they share every figure", () => {
    const shared = "The two plans share every figure as it would be written down.";
    expect(planDifferencesText(before, before)).toBe(shared);
    expect(planDifferencesHtml(before, structuredClone(before))).toContain(shared);
  });
});
