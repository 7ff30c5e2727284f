import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculations, validInput } from "#ci/inputs.js";
import { apart, fractionFrom, inBase, linesInFractions, NoValue } from "#ci/rational.js";
import type { Fraction } from "#ci/rational.js";
import type { Quantity } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import { formulaStyle, parseTree, treeText } from "./index.js";
import type { Declared, Tree } from "./index.js";

function hasRoot(tree: Tree): boolean {
  if (tree.op === "number" || tree.op === "name") return false;
  return "of" in tree ? tree.op === "√" || hasRoot(tree.of) : hasRoot(tree.left) || hasRoot(tree.right);
}

const rational = calculations.filter(([, { declaration }]) => !declaration.lines.some(({ tree }) => hasRoot(tree)));

/** What the lines come to by fractions; null where they come to nothing. */
function byFractions(declared: Declared, input: Record<string, unknown>): ReadonlyMap<string, unknown> | null {
  try {
    return linesInFractions(declared, input);
  } catch (error) {
    if (error instanceof NoValue) return null;
    throw error;
  }
}

function answerOf(call: () => unknown): unknown {
  try {
    return call();
  } catch (error) {
    if (error instanceof QuantityError) return error;
    throw error;
  }
}

/** Whether a fraction, or a line with a least value, lies outside what the formula may come to. */
function isOutside({ result, lines, atLeast }: Declared, worked: ReadonlyMap<string, unknown>): boolean {
  const last = worked.get(lines.at(-1)?.name ?? "") as Fraction;
  const value = Number(last[0]) / Number(last[1]);
  const { above, below, atMost } = result.range;
  const held = Object.entries(atLeast).some(([name, least]) => {
    const [over, under] = worked.get(name) as Fraction;
    return over < BigInt(least) * under;
  });
  const least = result.range.atLeast;
  return (
    held ||
    (result.what === "whole" && last[0] % last[1] !== 0n) ||
    (least !== null && value < least) ||
    (above !== null && value <= above) ||
    (below !== null && value >= below) ||
    (atMost !== undefined && value > atMost)
  );
}

describe.each(rational)("%s", (_name, calculation) => {
  const { declaration } = calculation;
  const asked = typeof declaration.resultIn === "string" ? declaration.inputs[declaration.resultIn] : undefined;

  it("comes to what whole-number fractions give, and is refused only where they give nothing that fits", () => {
    fc.assert(
      fc.property(validInput(calculation), (input) => {
        const worked = byFractions(declaration, input);
        const answer = answerOf(() => calculation(input));
        if (answer instanceof QuantityError) {
          expect(worked === null || isOutside(declaration, worked), answer.message).toBe(true);
          return;
        }
        if (worked === null) expect.fail(`fractions give nothing, the calculation ${String(answer)}`);
        const exact = worked.get(declaration.lines.at(-1)?.name ?? "") as Fraction;
        if (typeof answer === "number") {
          expect(Math.abs(answer - Number(exact[0]) / Number(exact[1]))).toBeLessThanOrEqual(1e-15 * Math.abs(answer));
          return;
        }
        const quantity = answer as Quantity<string>;
        const given = asked?.what === "unit" ? fractionFrom(quantity.value) : inBase(quantity);
        const chains = `ours ${String(answer)}, in base units ${given.join(" ÷ ")}; by fractions ${exact.join(" ÷ ")}`;
        expect(apart(exact, given), chains).toBeLessThan(1e-29);
      }),
      { numRuns: 50 },
    );
  });
});

const leaf = fc.constantFrom<Tree>(
  { op: "name", name: "a" },
  { op: "name", name: "b" },
  { op: "number", text: "2" },
  { op: "number", text: "0.75" },
);
const { tree: anyTree } = fc.letrec<{ tree: Tree }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 5, depthIdentifier: "tree" },
    leaf,
    fc.record({ op: fc.constantFrom("roundUp", "roundDown", "nearest", "Σ"), of: tie("tree") }),
    fc.record({ op: fc.constantFrom("+", "−", "×", "÷"), left: tie("tree"), right: tie("tree") }),
  ),
}));
const plain = formulaStyle((name) => name);

describe("the fractions", () => {
  it("notice a sign planted in a formula", () => {
    const [, warp] = rational.find(([name]) => name === "warpLength") ?? expect.fail("no warp");
    const [input = {}] = fc.sample(validInput(warp), { numRuns: 1, seed: 3 });
    const { lines, ...declared } = warp.declaration;
    const planted = lines.map(({ name, tree }) =>
      tree.op === "÷" ? { name, tree: { ...tree, op: "×" as const } } : { name, tree },
    );
    const wrong = linesInFractions({ ...declared, lines: planted }, input).get("warp") as Fraction;
    expect(apart(inBase(warp(input) as Quantity<string>), wrong)).toBeGreaterThan(1e-3);
  });
});

describe("any formula", () => {
  it("printed and read again is the same text and comes to the same, with no bracket lost", () => {
    const at = (lines: Declared["lines"]): unknown =>
      byFractions({ ...calculations[0]?.[1].declaration, inputs: {}, lines } as Declared, {})?.get("x");
    const known = [
      { name: "a", tree: parseTree("7 ÷ 3") },
      { name: "b", tree: parseTree("5 ÷ 11") },
    ];
    fc.assert(
      fc.property(anyTree, (tree) => {
        const text = treeText(tree, plain);
        const again = parseTree(text);
        expect(treeText(again, plain)).toBe(text);
        expect(at([...known, { name: "x", tree: again }])).toEqual(at([...known, { name: "x", tree }]));
      }),
      { numRuns: 1000 },
    );
  });

  it("read from text, printed and read again is the same tree, when the text has no bracket it could spare", () => {
    for (const text of [
      "a − (b − 2)",
      "a ÷ (b ÷ 2)",
      "a ÷ (b × 2)",
      "(a + b) × 2",
      "roundUp(a ÷ b) × b",
      "√(Σ(a ÷ b) + 2)",
    ])
      expect(treeText(parseTree(text), plain)).toBe(text);
  });
});
