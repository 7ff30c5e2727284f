import { chromium } from "playwright-core";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";
import { settByDiameter, widthInReedFromFinished } from "../../handbook/index.js";
import { inches, percentLost, yardsPerPound } from "../../units/index.js";
import { asMathML, explain } from "./index.js";

interface Node {
  readonly nodeId: string;
  readonly ignored: boolean;
  readonly role?: { readonly value: string };
  readonly name?: { readonly value: string };
  readonly childIds?: readonly string[];
}

/** What a screen reader is handed, as an outline: the role of each node with what lies in it, and the text of the leaves. */
function outline(nodes: readonly Node[]): (id: string) => string {
  const known = new Map(nodes.map((node) => [node.nodeId, node]));
  const told = (id: string): string => {
    const node = known.get(id);
    const role = node?.role?.value ?? "";
    if (role === "StaticText") return (node?.name?.value ?? "").trim();
    if (role === "InlineTextBox") return "";
    const inside = (node?.childIds ?? []).map(told).filter(Boolean).join(" ");
    return role === "MathMLFraction" || role === "MathMLSquareRoot" ? `${role}[${inside}]` : inside;
  };
  return told;
}

describeWith("Chromium", (path) => {
  it("hands a screen reader fractions and roots as such, and names and units as words", async () => {
    const browser = await chromium.launch({ executablePath: path, args: ["--no-sandbox"] });
    try {
      const page = await browser.newPage();
      const read = async (math: string): Promise<string> => {
        await page.setContent(`<!doctype html><title>a working</title>${math}`);
        const session = await page.context().newCDPSession(page);
        const { nodes } = (await session.send("Accessibility.getFullAXTree")) as { nodes: readonly Node[] };
        return outline(nodes)(nodes[0]?.nodeId ?? "");
      };
      const width = asMathML(
        explain(widthInReedFromFinished, { finishedWidth: inches(18), reedToFinished: percentLost(10) }),
      );
      const told = await read(width);
      expect(told).toContain("width in reed = MathMLFraction[finished width 1 − reed to finished]");
      expect(told).toContain("= MathMLFraction[18 in 1 − 10 %]");
      const sett = { constant: 0.9, count: yardsPerPound(3360), ends: 2, intersections: 2 };
      const root = asMathML(explain(settByDiameter, sett));
      expect(await read(root)).toContain("0.9 × MathMLSquareRoot[3360 yd/lb]");
      for (const math of [width, root]) {
        const refused = `!!new DOMParser().parseFromString(${JSON.stringify(math)}, "application/xml").querySelector("parsererror")`;
        expect(await page.evaluate(refused)).toBe(false);
      }
    } finally {
      await browser.close();
    }
  });
});
