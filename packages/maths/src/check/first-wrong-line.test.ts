import { describe, expect, it } from "vitest";
import { napkins } from "#ci/napkins.js";
import { warpLength } from "../handbook/index.js";
import { firstWrongLine } from "./index.js";

function judged(figures: Readonly<Record<string, string>>): readonly string[] {
  return firstWrongLine(warpLength, napkins, figures).map(({ verdict }) => verdict);
}

describe("a working written line by line", () => {
  it("is right where every line is, however it was rounded on the way", () => {
    expect(judged({ cutLength: "23", onLoom: "204.4", threadInCloth: "222.2", warp: "252.2" })).toEqual(
      Array.from({ length: 4 }, () => "right"),
    );
  });

  // 184 × 1.1 = 202.4; ÷ 0.92 = 220; + 30 = 250.
  it("has one slip told once, and what follows is right from the figure above", () => {
    const lines = firstWrongLine(warpLength, napkins, {
      cutLength: "23",
      onLoom: "202.4",
      threadInCloth: "220",
      warp: "250",
    });
    expect(lines.map(({ verdict }) => verdict)).toEqual([
      "right",
      "wrong",
      "right from the figure above",
      "right from the figure above",
    ]);
    expect(lines[1]?.slips).toEqual([
      "a sum that adds the 10 % of loom to finished instead of dividing it out gives this",
    ]);
    expect(lines.flatMap(({ slips }) => slips)).toHaveLength(1);
  });

  it("has a second slip told from the wrong figure above it", () => {
    // 220 − 30 = 190 where the waste is to be added.
    const lines = firstWrongLine(warpLength, napkins, { onLoom: "202.4", threadInCloth: "220", warp: "190" });
    expect(lines.at(-1)).toMatchObject({ verdict: "wrong", rounded: "250" });
    expect(lines.at(-1)?.slips).toContain("a sum that takes loom waste away instead of adding it gives this");
  });

  it("takes a line left out for right, and refuses a figure that is no number", () => {
    expect(judged({ warp: "252.2" })).toEqual(["right"]);
    expect(() => judged({ warp: "about 250" })).toThrow("a number as it was written");
    expect(() => judged({ wrap: "252.2" })).toThrow(
      'only cutLength, onLoom, threadInCloth, warp, received the text "wrap"',
    );
  });
});
