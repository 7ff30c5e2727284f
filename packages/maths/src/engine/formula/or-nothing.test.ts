import { describe, expect, it } from "vitest";
import { calculations } from "#ci/inputs.js";
import { linesInFractions } from "#ci/rational.js";
import { breaksBetween, yarnInAll, yarnMissing } from "../../handbook/index.js";
import { ounces, pounds, yards } from "../../units/index.js";
import { check } from "../../check/index.js";
import { forColumns } from "../columns/index.js";
import { solveFor } from "../solve/index.js";
import { spreadsheetFormula, spreadsheetLines } from "../spreadsheet/index.js";
import { asLatex, asMathML, asText, explain } from "../working/index.js";
import { formulaStyle, namesIn, parseTree, treeText } from "./index.js";
import type { Tree } from "./index.js";

/** The names that stand under `orNothing` anywhere in a tree. */
function underNothing(tree: Tree): readonly string[] {
  if (tree.op === "number" || tree.op === "name") return [];
  if (tree.op === "orNothing") return namesIn(tree.of);
  return "of" in tree ? underNothing(tree.of) : [...underNothing(tree.left), ...underNothing(tree.right)];
}

describe("less than nothing", () => {
  const short = { onHand: ounces(8), needed: ounces("21.5") };
  const enough = { onHand: ounces(30), needed: ounces("21.5") };
  const cells = { onHand: ["B1", ounces], needed: ["B2", ounces] } as const;

  it("is read and printed as it is written", () => {
    const tree = parseTree("orNothing(needed − onHand) × 2");
    expect(
      treeText(
        tree,
        formulaStyle((name) => name),
      ),
    ).toBe("orNothing(needed − onHand) × 2");
  });

  it("is nothing, alone, in a column, in fractions and in a cell", () => {
    expect(yarnMissing(short).value).toBe("13.5");
    expect(yarnMissing(enough).value).toBe("0");
    const column = forColumns(yarnMissing, { onHand: ounces, needed: ounces }, ounces);
    expect([...column({ onHand: [8, 30, 21.5], needed: 21.5 })]).toEqual([13.5, 0, 0]);
    expect(linesInFractions(yarnMissing.declaration, enough).get("missing")).toEqual([0n, 1n]);
    expect(spreadsheetFormula(yarnMissing, cells, ounces)).toBe("=MAX(0,B2-B1)");
    const [line] = spreadsheetLines(yarnMissing, cells, ounces, () => "B3");
    expect(line).toMatchObject({ words: "orNothing(needed − on hand)", formula: "=MAX(0,B2-B1)", unit: "oz" });
  });

  it("stands in every notation of a working, with the numbers that were taken away", () => {
    const working = explain(yarnMissing, enough);
    expect(working.steps[0]).toMatchObject({ numbers: "orNothing(21.5 oz − 30 oz)", value: "0 oz" });
    expect(asText(working)).toContain("orNothing(21.5 oz − 30 oz)");
    expect(asLatex(working)).toContain(String.raw`\text{or nothing } \left( 21.5 \text{ oz} - 30 \text{ oz} \right)`);
    expect(asMathML(working)).toContain(
      "<mrow><mtext>or nothing\u00a0</mtext><mrow><mo>(</mo><mrow><mn>21.5</mn><mtext>\u00a0oz</mtext></mrow>",
    );
  });

  it("is the slip of who counts it all the same", () => {
    const claim = { written: "-8.5", unit: ounces };
    const { value, slips } = check(yarnMissing, enough, claim);
    expect(value).toBe("wrong");
    expect(slips.map(({ says }) => says).join(" ")).toContain("counts less than nothing");
    expect(check(yarnMissing, short, { written: "13.5", unit: ounces }).right).toBe(true);
  });

  it("does not tell what it was taken from", () => {
    expect(() => solveFor(yarnMissing, "needed", "missing")).toThrow("where the answer is nothing, many give it");
  });

  it("is never asked of a whole list, which a cell cannot answer", () => {
    for (const [name, { declaration }] of calculations) {
      const lists = Object.keys(declaration.inputs).filter((field) => declaration.inputs[field]?.what === "list");
      const under = declaration.lines.flatMap(({ tree }) => (name === "breaksBetween" ? [] : underNothing(tree)));
      expect(
        under.filter((one) => lists.includes(one)),
        name,
      ).toEqual([]);
    }
    expect(spreadsheetFormula(breaksBetween, { entries: "A1:A3" }, null)).toBe("=MAX(0,SUMPRODUCT(A1:A3)-1)");
  });
});

describe("a list of none", () => {
  const none = { warp: yards(1800), wefts: [] };

  it("sums to nothing, alone, in a column and in fractions", () => {
    expect(yarnInAll(none).value).toBe("1800");
    const column = forColumns(yarnInAll, { warp: yards, wefts: yards }, yards);
    expect([...column({ warp: [1800, 20], wefts: [] })]).toEqual([1800, 20]);
    expect([...column({ warp: [1800, 20], wefts: [[1, 2], 5] })]).toEqual([1806, 27]);
    const [over, under] = linesInFractions(yarnInAll.declaration, none).get("inAll") as readonly [bigint, bigint];
    expect(Number(over) / Number(under)).toBeCloseTo(1800 * 0.9144, 9);
  });

  it("prints a nothing in every notation, never a blank", () => {
    const working = explain(yarnInAll, none);
    expect(working.steps[0]).toMatchObject({ numbers: "1800 yd + 0", value: "1800 yd" });
    expect(asText(working)).toContain("1800 yd + 0");
    expect(asLatex(working)).toContain("+ 0");
    expect(asMathML(working)).toContain("<mo>+</mo><mn>0</mn>");
  });

  it("is judged as any other sum", () => {
    expect(check(yarnInAll, none, { written: "1800", unit: yards }).right).toBe(true);
    expect(check(yarnInAll, none, { written: "1801", unit: yards }).right).toBe(false);
  });

  it("is a cell with 0 in a sheet", () => {
    const cells = { warp: ["B1", yards], wefts: ["B2", yards] } as const;
    expect(spreadsheetFormula(yarnInAll, cells, yards)).toBe("=B1+SUMPRODUCT(B2)");
  });

  it("is refused where one is needed, and what is no list is refused everywhere", () => {
    expect(() => breaksBetween({ entries: [] })).toThrow("a list of at least one");
    expect(() => yarnInAll({ warp: yards(1), wefts: yards(1) as never })).toThrow("a list, each a length");
    expect(() => yarnInAll({ warp: yards(1), wefts: [pounds(1) as never] })).toThrow("a length");
    const column = forColumns(yarnInAll, { warp: yards, wefts: yards }, yards);
    expect(() => column({ warp: [1] })).toThrow("a list of columns");
  });
});
