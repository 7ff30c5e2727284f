import { describe, expect, it } from "vitest";
import { notebooks, outputsOf, typeFaults } from "./notebooks.mjs";
import { describeWith } from "../support/program.js";

/** Worked out by hand beside the cells. */
const BY_HAND: Readonly<Record<string, readonly string[]>> = {
  // (120 ÷ 840) ÷ (20 ÷ 7000); 590.541 ÷ 50; 8 × 23 ÷ 0.9 ÷ 0.92 + 30 and 8 × 23 × 1.18 + 30.
  "first-count": ["50 Ne", "11.811", "252.22 in; 247.12 in; 5.10 in"],
  // 24 + 2 × (40 + 3 × 18 + 66) + 24; 24 + 40 + 10 + 1; 6 × 2.
  "striped-warp": ["368 ends: 252 natural, 80 madder, 36 indigo", "at end 75", "12 ends change"],
  // 450 ÷ 453.59237 × 4 × 840 × 0.9144 = 3048.1 m; ÷ 5.1 = 597.
  "many-yarns": ["yarn length (m)", "3048, ", "| 3048 | 597 | yes |"],
};

describeWith("Jupyter", (jupyter) => {
  describe.each(notebooks())("the notebook %s", (name, notebook) => {
    it("has cells whose types hold", () => {
      expect(typeFaults(name, notebook)).toBe("");
    });

    it("gives in a kernel of its own what it is kept with, and what was reckoned by hand", () => {
      const kept = notebook.cells.flatMap(({ outputs }) => (outputs === undefined ? [] : [outputs]));
      const given = outputsOf(notebook, jupyter);
      expect(given).toEqual(kept);
      const text = given.flat().map((output) => output.text ?? Object.values(output.data ?? {}).join(" "));
      for (const expected of BY_HAND[name] ?? ["nothing was reckoned by hand"])
        expect(text.join("\n")).toContain(expected);
      expect(given.flat().filter(({ output_type }) => output_type === "error")).toEqual([]);
    });
  });
});
