import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { yarnMass } from "../../handbook/index.js";
import { cottonCount, currency, yards } from "../../units/index.js";
import { asHtml, asLatex, asMarkdown, asMathML, asText, explain } from "./index.js";
import type { Working } from "./index.js";

const hostile = fc.string({
  unit: fc.constantFrom(
    ..."<>&\"'`/=\\{}[]()|*_#$%^~ax1+×÷,\n\u0000\u202e".split(""),
    ...["<script>", "</mtext>", "<img src=x onerror=y>", "]]>", "-->", "javascript:", "\\input{x}", "&#60;"],
  ),
  maxLength: 12,
});

const { tree } = fc.letrec((tie) => ({
  tree: fc.oneof(
    { maxDepth: 3 },
    fc.record({ op: fc.constant("number"), text: hostile }),
    fc.record({ op: fc.constant("name"), name: hostile }),
    fc.record({ op: fc.oneof(fc.constantFrom("√", "Σ"), hostile), of: tie("tree") }),
    fc.record({ op: fc.oneof(fc.constantFrom("+", "÷"), hostile), left: tie("tree"), right: tie("tree") }),
  ),
}));
const key = fc.constantFrom("a", "b");

/** A working as a program could read it from anybody's JSON: text wherever there is text. */
const foreign: fc.Arbitrary<Working> = fc
  .record({
    name: hostile,
    inputs: fc.array(fc.record({ name: hostile, value: hostile, meaning: hostile }), { minLength: 1, maxLength: 2 }),
    conversions: fc.array(fc.record({ name: hostile, text: hostile }), { maxLength: 1 }),
    steps: fc.array(
      fc.record({ key, tree, name: hostile, formula: hostile, numbers: hostile, sign: hostile, value: hostile }),
      { minLength: 1, maxLength: 2 },
    ),
    amounts: fc.dictionary(fc.oneof(key, hostile), fc.array(hostile, { maxLength: 2 })),
    result: fc.record({ sign: hostile, value: hostile }),
    source: fc.record({ key: hostile, author: hostile, title: hostile, year: hostile, place: hostile }),
  })
  .map((data) => data as unknown as Working);

const OURS =
  /^<(?:\/?(?:table|caption|tbody|tr|td|th|p|mtr|mtd|mn|mo|mtext|mrow|mfrac|msqrt|mtable|math)|mtable displaystyle="true"|th scope="row"|math xmlns="http:\/\/www\.w3\.org\/1998\/Math\/MathML" display="block")>$/u;

/** Everything a page would take for a tag that is none of ours. */
const strange = (html: string): readonly string[] => (html.match(/<[^>]*>?/gu) ?? []).filter((tag) => !OURS.test(tag));

describe("a working read from anybody's data", () => {
  it("never becomes a tag or an attribute of the page it is shown on", () => {
    fc.assert(
      fc.property(foreign, (working) => {
        expect(strange(asHtml(working))).toEqual([]);
        expect(strange(asMathML(working))).toEqual([]);
        expect(asHtml(working)).not.toMatch(/&(?!#\d+;)/u);
      }),
      { numRuns: 500 },
    );
  });

  it("brings no tag, link or emphasis of its own into Markdown, and no command into LaTeX", () => {
    fc.assert(
      fc.property(foreign, (working) => {
        const markdown = asMarkdown(working).replaceAll("<br>", "");
        expect(markdown).not.toMatch(/<|\[|`/u);
        expect(asLatex(working)).not.toContain("\\input");
      }),
      { numRuns: 500 },
    );
  });
});

describe("what a notebook shows", () => {
  const display = Symbol.for("Jupyter.display");
  const shown = (thing: object): Readonly<Record<string, string>> =>
    (thing as Readonly<Record<symbol, () => Readonly<Record<string, string>>>>)[display]?.() ?? {};

  it("of a length is its amount and unit, as text alone", () => {
    expect(shown(yards("2.5"))).toEqual({ "text/plain": "2.5 yd" });
  });

  it("of a working is its text and the page of the same numbers, and neither is part of its data", () => {
    const working = explain(yarnMass, { length: yards(1680), count: cottonCount(2) });
    expect(shown(working)).toEqual({ "text/plain": asText(working), "text/html": asHtml(working) });
    expect(strange(shown(working)["text/html"] ?? "<")).toEqual([]);
    expect(Object.getOwnPropertySymbols({ ...working })).toEqual([]);
  });

  it("of money can carry nothing but letters after the amount", () => {
    expect(() => currency("<img src=x>")).toThrow("1 to 20 letters");
  });
});
