import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculations, plainRow, unitOf, validInput } from "#ci/inputs.js";
import { averageCountDirect } from "../../handbook/index.js";
import { kilograms, tex } from "../../units/index.js";
import { check } from "../../check/index.js";
import { forColumns } from "../columns/index.js";
import type { Quantity } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import { spreadsheetFormula } from "../spreadsheet/index.js";
import { explain } from "../working/index.js";
import { calculation as declared, dimensionsOf, formulaStyle, namesIn, parseTree, treeText } from "./index.js";

function refusalOf(call: () => unknown): QuantityError {
  try {
    call();
  } catch (error) {
    if (error instanceof QuantityError) return error;
    throw error;
  }
  throw new Error("was not refused");
}

describe.each(calculations)("%s", (_name, calculation) => {
  const { declaration } = calculation;
  const inputs = Object.entries(declaration.inputs);
  const sample = fc.sample(validInput(calculation), { numRuns: 1, seed: 5 })[0] ?? {};

  it("uses every input it declares and nothing else, and its dimensions balance", () => {
    const lines = declaration.lines.map(({ name }) => name);
    // What a rule reckons in may be the unit that an input names.
    const reckoned = inputs.flatMap(([, { reckonedIn }]) => (typeof reckonedIn === "string" ? [reckonedIn] : []));
    const inLines = declaration.lines.flatMap(({ tree }) => namesIn(tree)).map((name) => name.split(".")[0] ?? "");
    const used = [...inLines, ...reckoned];
    expect(new Set(used.filter((name) => !lines.includes(name)))).toEqual(new Set(inputs.map(([field]) => field)));
    expect(dimensionsOf(declaration).size).toBeGreaterThan(inputs.length);
  });

  it("prints each line so that reading it gives the same line", () => {
    for (const { tree } of declaration.lines)
      expect(
        parseTree(
          treeText(
            tree,
            formulaStyle((name) => name),
          ),
        ),
      ).toEqual(tree);
  });

  it("gives a finite answer or a typed refusal, the same as its working", () => {
    fc.assert(
      fc.property(validInput(calculation), (input) => {
        let answer: unknown;
        try {
          answer = calculation(input);
        } catch (error) {
          expect(error).toBeInstanceOf(QuantityError);
          expect((error as QuantityError).code).toBe("no-answer");
          return;
        }
        const value = typeof answer === "number" ? answer : Number((answer as { value: string }).value);
        expect(Number.isFinite(value)).toBe(true);
        const { result, steps } = explain(calculation, input);
        expect(steps).toHaveLength(declaration.lines.length);
        const shown = Number.parseFloat(result.value.replace("(−", "-"));
        expect(Math.abs(shown - value)).toBeLessThanOrEqual(1e-5 * Math.abs(value));
      }),
      { numRuns: 60 },
    );
  });

  it("gives a column the answers it gives row by row", () => {
    fc.assert(
      fc.property(validInput(calculation), (input) => {
        let answer: unknown;
        try {
          answer = calculation(input);
        } catch {
          return;
        }
        const unit = typeof answer === "number" ? null : unitOf(answer as Quantity<string>);
        const { units, columns } = plainRow(input, declaration);
        const column = forColumns(calculation as never, units, unit)(columns);
        const exact = unit === null ? (answer as number) : (answer as Quantity<string>).in(unit);
        // No warp has ten million ends; past them a residue of doubles and a true fraction look alike to the guard.
        if (/round|nearest/u.test(declaration.formula) && Math.abs(exact) > 1e7) return;
        expect(Math.abs((column[0] ?? Number.NaN) - exact)).toBeLessThanOrEqual(1e-12 * Math.abs(exact));
      }),
      { numRuns: 60 },
    );
  });

  it("refuses every field left out, named wrong, or of another kind, with its path", () => {
    for (const [field, input] of inputs) {
      const without = Object.fromEntries(Object.entries(sample).filter(([name]) => name !== field));
      expect(refusalOf(() => calculation(without))).toMatchObject({
        code: "missing",
        function: declaration.name,
        path: [field],
        received: "nothing",
      });
      const bad: unknown[] = [null, "3", {}, true, Number.NaN, Number.POSITIVE_INFINITY, -1, () => 3, Symbol("x")];
      if (!input.mayBeEmpty) bad.push([]);
      if (input.what === "whole") bad.push(2.5, 2 ** 60);
      for (const value of bad) {
        const refusal = refusalOf(() => calculation({ ...sample, [field]: value }));
        expect(refusal.path[0]).toBe(field);
        expect(refusal.expected.length * refusal.received.length).toBeGreaterThan(0);
      }
    }
    expect(refusalOf(() => calculation({ ...sample, colour: 3 })).code).toBe("unknown-field");
  });

  if (inputs.some(([, { what }]) => what === "quantity")) {
    it("refuses a copied, tampered or unfrozen quantity", () => {
      for (const [field, input] of inputs) {
        if (input.what !== "quantity") continue;
        const own = sample[field] as object;
        const copies: readonly unknown[] = [
          structuredClone({ ...own }),
          JSON.parse(JSON.stringify(own)),
          { ...own, value: "1" },
          Object.create(own),
        ];
        for (const copy of copies) {
          expect(["copied-quantity", "wrong-kind"]).toContain(
            refusalOf(() => calculation({ ...sample, [field]: copy })).code,
          );
        }
      }
    });
  }

  it("lists all its faulty fields in one error", () => {
    expect(refusalOf(() => calculation({})).faults).toHaveLength(inputs.length);
    for (const nothing of [undefined, null, 3, "x", []]) {
      expect(refusalOf(() => calculation(nothing as never)).faults).toHaveLength(inputs.length);
    }
  });
});

describe("two lists", () => {
  it("of unlike length are refused, not cut to the shorter", () => {
    const lots = { masses: [kilograms(1), kilograms(2)], counts: [tex(30)] };
    expect(refusalOf(() => averageCountDirect(lots)).message).toContain("a list of 2, one for each of masses");
  });
});

describe("a formula", () => {
  it("is read with × and ÷ before + and −, from the left", () => {
    const text = (source: string): string =>
      treeText(
        parseTree(source),
        formulaStyle((name) => name),
      );
    expect(text("a − b − c")).toBe("a − b − c");
    expect(text("a − (b − c)")).toBe("a − (b − c)");
    expect(text("(a × b) ÷ (c × d)")).toBe("a × b ÷ (c × d)");
    expect(text("√(a + b) × Σ(1 ÷ c)")).toBe("√(a + b) × Σ(1 ÷ c)");
    expect(text("((a))")).toBe("a");
  });

  it.each([
    ["a +", "unexpected end"],
    ["a b", "unexpected b"],
    ["(a", "unexpected end"],
    ["a)", "unexpected )"],
    ["a ^ b", "cannot read on from position 1"],
    ["roundUp a b", "unexpected a"],
    ["", "unexpected end"],
    ["a ÷ ÷ b", "unexpected ÷"],
  ])("is not read from %j: %s", (source, says) => {
    expect(() => parseTree(source)).toThrow(`formula "${source}": ${says}`);
  });

  it("is what the printers, the check, the cells and the columns ask for: anything else is refused", () => {
    for (const none of [undefined, null, {}, "warpLength", () => 3]) {
      const given = none as never;
      expect(refusalOf(() => explain(given, {}))).toMatchObject({ function: "explain", path: ["calculation"] });
      expect(refusalOf(() => check(given, {}, { written: "1", unit: null }))).toMatchObject({
        function: "check",
        path: ["calculation"],
      });
      expect(refusalOf(() => spreadsheetFormula(given, {}, null))).toMatchObject({
        function: "spreadsheetFormula",
        path: ["calculation"],
      });
      expect(refusalOf(() => forColumns(given, {}, null))).toMatchObject({
        function: "forColumns",
        path: ["calculation"],
      });
    }
  });

  it("is declared only when it is first used, and once", () => {
    let times = 0;
    const counted = declared<object, number>(() => {
      times += 1;
      return averageCountDirect.declaration as never;
    });
    expect(times).toBe(0);
    expect(counted.declaration.formula).toBe(averageCountDirect.declaration.formula);
    expect(counted.declaration.name).toBe("averageCountDirect");
    expect(times).toBe(1);
  });
});
