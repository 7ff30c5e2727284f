import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculations, unitOf, validInput } from "#ci/inputs.js";
import { check } from "../../check/index.js";
import type { Quantity } from "../quantity/index.js";
import { namesIn } from "../formula/index.js";
import { attempt, QuantityError } from "../refusal.js";
import { asHtml, asLatex, asMarkdown, asMathML, asText, explain } from "./index.js";
import type { Told, Working } from "./index.js";

const NUMBER = /\d+(?:\.\d+)?/gu;
const bare = (html: string): string => html.replace(/<[^>]*>/gu, " ").replace(/&#\d+;/gu, " ");
/** What a reader is told: a line without signs and brackets, which each notation sets in its own way. */
const said = (text: string): string =>
  text
    .replace(/(round|or)(Up|Down|Nothing)\(/gu, (_, a: string, b: string) => `${a} ${b.toLowerCase()} `)
    .replace(/[+−×÷√Σ∑(),=≈\s]+/gu, " ")
    .trim();

/** The rows of a piece of MathML, and the lines of a piece of LaTeX, as a reader is told them. */
const rowsIn = (math: string): readonly string[] => math.split("<mtr>").slice(1).map(bare).map(said);
const linesIn = (latex: string): readonly string[] =>
  latex
    .split("\n")
    .slice(1, -1)
    .map((line) =>
      line.replace(/\\(?:text|frac|sqrt|sum|times|approx|left|right)|(?<!\\)[{}&]|(?<= )-(?= )|\\\\$/gu, " "),
    )
    .map((line) => said(line.replace(/\\(?=[%&#_])/gu, "")));
const numbersIn = (text: string): readonly string[] => text.match(NUMBER) ?? [];

/** How many children each element of MathML Core takes that we use; null for any number of them. */
const CHILDREN: Readonly<Record<string, number | null>> = {
  math: null,
  mtable: null,
  mtr: null,
  mtd: null,
  mrow: null,
  msqrt: null,
  mfrac: 2,
  mn: 0,
  mo: 0,
  mtext: 0,
};
const PARENTS: Readonly<Record<string, string>> = { mtr: "mtable", mtd: "mtr" };

/** What is wrong with a piece of MathML, as a reader of XML and MathML Core would find it. */
function mathFaults(math: string): readonly string[] {
  const faults: string[] = [];
  const open: { name: string; children: number }[] = [{ name: "", children: 0 }];
  let at = 0;
  for (const tag of math.matchAll(/<(\/?)([a-z]+)((?: [a-z]+="[^"<]*")*)>/gu)) {
    const between = math.slice(at, tag.index);
    const parent = open.at(-1) ?? { name: "", children: 0 };
    const isLeaf = CHILDREN[parent.name] === 0;
    if (/[<>]|&(?!#\d+;)/u.test(between)) faults.push(`a mark that is not escaped: ${between}`);
    if (between.trim() !== "" && !isLeaf) faults.push(`text in ${parent.name}: ${between}`);
    at = tag.index + tag[0].length;
    const [, closes, name = ""] = tag;
    if (closes === "/") {
      const own = open.pop();
      const wanted = CHILDREN[own?.name ?? ""];
      if (own?.name !== name) faults.push(`${name} closes ${String(own?.name)}`);
      else if (typeof wanted === "number" && own.children !== wanted)
        faults.push(`${name} of ${own.children} children`);
      continue;
    }
    if (!(name in CHILDREN)) faults.push(`${name} is none of MathML Core that we use`);
    if (PARENTS[name] !== undefined && PARENTS[name] !== parent.name) faults.push(`${name} in ${parent.name}`);
    parent.children += 1;
    open.push({ name, children: 0 });
  }
  if (open.length !== 1 || at !== math.length) faults.push("not closed");
  return faults;
}

function expectTheSameIn(thing: Told | Working, wanted: readonly string[]): void {
  expect(mathFaults(asMathML(thing))).toEqual([]);
  for (const text of [bare(asMathML(thing)), asLatex(thing)]) expect(numbersIn(text)).toEqual(wanted);
  for (const text of [asText(thing), asMarkdown(thing), bare(asHtml(thing))]) {
    const found = [...numbersIn(text)];
    for (const number of wanted) expect(found).toContain(number);
  }
}

/** An amount of a working as MathML sets it: its unit in one piece, off its number by a space that does not break. */
function setApart(amount: string): string {
  const [, number = "", unit = ""] = /^(?:≈ )?([\d.]+) (.+)$/u.exec(amount) ?? [];
  return unit === "" ? "" : `<mn>${number}</mn><mtext>\u00a0${unit}</mtext>`;
}

/** Workings of a calculation; an input that it refuses gives none. */
function workingsOf(calculation: (typeof calculations)[number][1], numRuns: number): readonly Working[] {
  return fc.sample(validInput(calculation), { numRuns, seed: 8 }).flatMap((input) => {
    const read = attempt(explain, calculation, input);
    return read.ok ? [read.value] : [];
  });
}

describe.each(calculations)("%s", (_name, calculation) => {
  it("tells every name, number and unit of a line in the same order in MathML and LaTeX", () => {
    for (const working of workingsOf(calculation, 6)) {
      const text = asText(working)
        .split("\n")
        .slice(1 + working.inputs.length + working.conversions.length, -1);
      const lines = text.map((line) => said(line.replace(/^ {2}that is /u, "")));
      expect(rowsIn(asMathML(working))).toEqual(lines);
      expect(linesIn(asLatex(working))).toEqual(lines);
      const math = asMathML(working);
      const named = working.steps.flatMap(({ key, tree }) => [key, ...namesIn(tree)]);
      for (const amount of named.flatMap((name) => working.amounts[name] ?? []))
        expect(math).toContain(setApart(amount));
    }
  });

  it("carries the same numbers in all five notations, in its working and in a verdict on it", () => {
    for (const input of fc.sample(validInput(calculation), { numRuns: 2, seed: 8 })) {
      let working: Working;
      try {
        working = explain(calculation, input);
      } catch (error) {
        expect(error).toBeInstanceOf(QuantityError);
        continue;
      }
      const apart = working.result.value === working.steps.at(-1)?.value ? "" : working.result.value;
      const lines = working.steps.flatMap(({ name, formula, numbers, value }) => [
        ...[name, formula, numbers === formula || numbers === value ? "" : numbers, value],
      ]);
      expectTheSameIn(working, numbersIn([...lines, apart].join(" ")));
      const answer = calculation(input) as number | Quantity<string>;
      const unit = typeof answer === "number" ? null : unitOf(answer);
      const verdict = check(calculation as never, input as never, { written: "12.5", unit });
      expectTheSameIn(verdict, numbersIn(verdict.says.join(" ")));
    }
  });
});

describe("MathML that is none", () => {
  it.each([
    ["<math><mfrac><mn>1</mn></mfrac></math>", "mfrac of 1 children"],
    ["<math><mrow>1</mrow></math>", "text in mrow: 1"],
    ["<math><mfenced></mfenced></math>", "mfenced is none of MathML Core that we use"],
    ["<math><mn>1</math>", "math closes mn"],
    ["<math><mtd></mtd></math>", "mtd in math"],
  ])("is found: %s", (math, fault) => {
    expect(mathFaults(math)).toContain(fault);
  });
});
