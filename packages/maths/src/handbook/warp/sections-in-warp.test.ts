import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice, cupOnTheBus2018, encyclopedie1765, woodhouseKilgour1921 } from "#ci/sources.js";
import { sectionsInWarp } from "./sections-in-warp.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("a warp shared out", () => {
  const lyons = "vol. 15, velvets";
  cited("800 pile ends of velvet in portées of 80", published(encyclopedie1765, lyons, "10", "10"), sectionsInWarp, [
    { ends: 800, endsPerSection: 80 },
  ]);
  cited(
    "6400 ground ends of velvet in double portées of 160",
    published(encyclopedie1765, lyons, "40", "40"),
    sectionsInWarp,
    [{ ends: 6400, endsPerSection: 160 }],
  );
});

describe("sections in a warp", () => {
  const rows: readonly (readonly [title: string, Citation, ends: number, perSection: number])[] = [
    ["440 ends in bouts of 40", published(cupOnTheBus2018, "whole post", "11", "11"), 440, 40],
    ["500 ends in sections of 56", published(woodhouseKilgour1921, "ch. XIII", "", "9"), 500, 56],
    ["113 ends in sections of 56: one end takes a third", worked("3"), 113, 56],
  ];
  for (const [title, citation, ends, perSection] of rows) {
    cited(title, citation, sectionsInWarp, [{ ends, endsPerSection: perSection }]);
  }
});

describe("the limits of sections in warp", () => {
  limits(sectionsInWarp, ["is one for one end", { ends: 1, endsPerSection: 40 }, 1], { ends: 0, endsPerSection: 0 });
});
