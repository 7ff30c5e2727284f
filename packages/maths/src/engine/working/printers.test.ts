import { describe, expect, it } from "vitest";
import { napkins } from "#ci/napkins.js";
import { warpLength } from "../../handbook/index.js";
import { asHtml, asLatex, asMarkdown, asMathML, asText, explain } from "./index.js";

const working = explain(warpLength, napkins);

function numbersIn(text: string): readonly string[] {
  return text.match(/\d+(?:\.\d+)?/gu) ?? [];
}

describe("a working in every notation", () => {
  it("has the same numbers in the same order in each", () => {
    const steps = working.steps.flatMap(({ formula, numbers, value }) => [formula, numbers, value]).join(" ");
    const wanted = numbersIn(steps);
    expect(wanted).toContain("204.444");
    expect(numbersIn(asLatex(working))).toEqual(wanted);
    expect(numbersIn(asMathML(working).replace(/xmlns="[^"]*"/u, ""))).toEqual(wanted);
    for (const text of [asText(working), asMarkdown(working), asHtml(working)]) {
      for (const number of wanted) expect(numbersIn(text)).toContain(number);
    }
  });

  it("is set in LaTeX line under line", () => {
    expect(asLatex(working).split("\n").slice(0, 4)).toEqual([
      String.raw`\begin{aligned}`,
      String.raw`\text{cut length} &= \text{finished length} + 2 \times \text{hem each end} \\`,
      String.raw`&= 21 \text{ in} + 2 \times 1 \text{ in} \\`,
      String.raw`&= 23 \text{ in} \\`,
    ]);
  });

  it("is MathML with a quotient as a fraction and each unit in words after its number", () => {
    const math = asMathML(working);
    expect(math).toContain("<mtext>finished length</mtext><mo>+</mo><mn>2</mn>");
    expect(math).toContain(
      "<mfrac><mrow><mrow><mn>204.444</mn><mtext>\u00a0in</mtext></mrow></mrow><mrow><mn>1</mn><mo>−</mo>",
    );
    expect(math).not.toContain("÷");
  });
});
