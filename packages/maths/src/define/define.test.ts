import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inputEntries } from "../catalogue/index.js";
import * as maths from "../index.js";
import { attempt, centimetres, endsPerInch, equal, inches, Length, lengthFrom, quantityFrom, yards } from "../index.js";
import type { Unit } from "../index.js";
import { defineCalculation, defineUnit, loss, positive, whole } from "./index.js";

const ells = defineUnit({ name: "ells", symbol: "ell", size: [5, 4, yards] });
const source = { key: "own", author: "the weaver", title: "notebook", year: "2026", place: "p. 3" };
const declaration = {
  name: "clothFromWarp",
  inputs: {
    warp: positive(Length, "wound"),
    ends: whole("pieces", "cut from it", { atLeast: 1 }),
    takeUp: loss("of the thread"),
  },
  formula: "woven = warp × (1 − takeUp)\npiece = woven ÷ ends",
  result: positive(Length, "of one piece"),
  toldIn: "warp",
  source,
} as const;
const clothFromWarp = defineCalculation(declaration);
const input = { warp: ells(8), ends: 4, takeUp: maths.percentLost(10) };

/** Every fault of a call that has to be refused. */
function faultsOf(f: (...given: never[]) => unknown, given: unknown): readonly maths.Fault<string>[] {
  const read = attempt(f, given);
  if (read.ok) throw new Error("was not refused");
  return read.faults;
}

describe("a unit of one's own", () => {
  // The English ell is 45 in: 2 ells are 90 in, and 228.6 cm.
  it("makes amounts and reads them, exactly", () => {
    expect(ells(2).in(inches)).toBe(90);
    expect(ells(2).in(centimetres)).toBe(228.6);
    expect(String(yards(5).in(ells))).toBe("4");
    expect(maths.asText(ells(3))).toBe("3 ell");
  });

  it("is printed, saved and read back as any of ours", () => {
    expect(equal(lengthFrom("2 1/2 ells", [ells]), ells("2.5"))).toBe(true);
    expect(equal(quantityFrom(JSON.parse(JSON.stringify(ells(7))), [ells]), ells(7))).toBe(true);
    expect(equal(quantityFrom(String(ells(7)), [ells]), ells(7))).toBe(true);
  });

  // Taken for yards, 8 ells are 288 in: less a tenth 259.2, a quarter of it 64.8, as is a fifth of the 324 in.
  it("is one that a check knows to be taken for another of its kind, and tells amounts in", () => {
    const { value, slips } = maths.check(clothFromWarp, input, { written: "64.8", unit: inches });
    expect(value).toBe("wrong");
    expect(slips.map(({ says }) => says)).toContain("a sum that takes warp to be in yd, not ell, gives this");
    expect(maths.check(clothFromWarp, input, { written: "1.8 ells", unit: ells }).value).toBe("right");
  });

  it("may be a closeness too: ends to the ell", () => {
    const endsPerEll = defineUnit({ name: "endsPerEll", symbol: "ends/ell", size: [1, 45, endsPerInch] });
    expect(endsPerEll(900).in(endsPerInch)).toBe(20);
    expect(maths.reedWidth({ ends: 368, sett: endsPerEll(900) }).in(inches)).toBe(18.4);
  });

  it.each<[unknown, string, readonly (string | number)[]]>([
    [undefined, "missing", []],
    [{ name: "Ells", symbol: "ell", size: [5, 4, yards] }, "unreadable", ["name"]],
    [{ name: "ells", symbol: "4", size: [5, 4, yards] }, "unreadable", ["symbol"]],
    [{ name: "ells", symbol: "ell", size: [5, 4] }, "wrong-kind", ["size"]],
    [{ name: "ells", symbol: "ell", size: [1.25, 1, yards] }, "not-whole", ["size", 0]],
    [{ name: "ells", symbol: "ell", size: [5, 0, yards] }, "not-whole", ["size", 1]],
    [{ name: "ells", symbol: "ell", size: [5, 4, "yards"] }, "wrong-kind", ["size", 2]],
    [{ name: "tenths", symbol: "tenth", size: [10, 1, maths.percentLost] }, "wrong-kind", ["size", 2]],
    [{ name: "ells", symbol: "ell", size: [5, 4, yards], of: 3 }, "unknown-field", ["of"]],
  ])("is refused where its definition is none: %#", (definition, code, path) => {
    const faults = faultsOf(defineUnit, definition);
    expect(faults.map((fault) => [fault.code, fault.path])).toEqual([[code, path]]);
  });

  it("names all that is wrong with it at once", () => {
    expect(faultsOf(defineUnit, {}).map(({ path }) => path[0])).toEqual(["name", "symbol", "size"]);
  });
});

describe("a calculation of one's own", () => {
  // 8 ells are 360 in; less a tenth 324; a quarter of it 81.
  it("answers, explains itself, checks and is checked as any of ours", () => {
    expect(clothFromWarp(input).in(inches)).toBe(81);
    expect(maths.explain(clothFromWarp, input).steps).toHaveLength(2);
    expect(maths.check(clothFromWarp, input, { written: "81", unit: inches }).value).toBe("right");
    expect(maths.check(clothFromWarp, input, { written: "90", unit: inches }).value).toBe("wrong");
    expect(
      maths.solveFor(clothFromWarp, "warp", "piece")({ piece: inches(81), ends: 4, takeUp: maths.percentLost(10) }),
    ).toBeDefined();
    expect(
      maths.spreadsheetFormula(
        clothFromWarp,
        { warp: ["A1", inches], ends: "A2", takeUp: ["A3", maths.percentLost] },
        inches,
      ),
    ).toContain("A1");
    expect(inputEntries(clothFromWarp).map(({ label }) => label)).toEqual(["warp", "ends", "take-up"]);
  });

  it("gives every fault of its input as data", () => {
    const read = attempt(clothFromWarp, { warp: 3, colour: 1 });
    const faults = read.ok ? [] : read.faults.map(({ code, function: by, path }) => [code, by, ...path]);
    expect(faults).toEqual([
      ["wrong-kind", "clothFromWarp", "warp"],
      ["missing", "clothFromWarp", "ends"],
      ["missing", "clothFromWarp", "takeUp"],
      ["unknown-field", "clothFromWarp", "colour"],
    ]);
  });

  it.each<[string, object, string, readonly (string | number)[]]>([
    ["a name that is none", { name: "Cloth!" }, "unreadable", ["name"]],
    ["no inputs", { inputs: {} }, "wrong-kind", ["inputs"]],
    ["a formula that cannot be read", { formula: "piece = warp ÷ (ends" }, "unreadable", ["formula"]],
    ["two signs of equality", { formula: "piece = warp = warp × (1 − takeUp) ÷ ends" }, "unreadable", ["formula"]],
    ["a name nobody knows", { formula: "piece = warp × (1 − takeUp) ÷ ends − hem" }, "unknown-word", ["formula"]],
    ["an input that is not used", { formula: "piece = warp ÷ ends" }, "unknown-field", ["inputs", "takeUp"]],
    ["dimensions that do not balance", { formula: "piece = warp × (1 − takeUp) + ends" }, "wrong-kind", ["formula"]],
    ["an answer of another kind", { formula: "piece = ends × (1 − takeUp) × warp × warp" }, "wrong-kind", ["formula"]],
    ["no source", { source: { ...source, author: "" } }, "wrong-kind", ["source", "author"]],
    ["a field that is none", { unit: inches }, "unknown-field", ["unit"]],
    ["an answer told in what is no input", { toldIn: "hem" }, "unknown-word", ["toldIn"]],
  ])("is refused for %s", (_what, change, code, path) => {
    const faults = faultsOf(defineCalculation, { ...declaration, ...change });
    expect(faults.map((fault) => [fault.code, fault.path])).toContainEqual([code, path]);
  });

  it("is refused with all that is wrong, whatever it is given", () => {
    for (const given of [undefined, null, 3, "x", [], {}, () => 3]) {
      for (const { function: by } of faultsOf(defineCalculation, given)) expect(by).toBe("defineCalculation");
    }
    expect(faultsOf(defineCalculation, {}).length).toBeGreaterThan(4);
  });
});

describe("what any unit prints", () => {
  const units = Object.values<unknown>({ ...maths }).filter((one): one is Unit<string> => maths.isUnit(one));
  const all = [...units, ells, maths.currency("EUR"), maths.lengthPerMass(maths.metres, 50, maths.grams)];
  const amounts = fc.tuple(fc.integer({ min: 0, max: 999_999 }), fc.integer({ min: 1, max: 99 }));

  it("is read back by the reader of any kind, alone and among all of its kind", () => {
    fc.assert(
      fc.property(fc.constantFrom(...all), amounts, (unit, [over, under]) => {
        const amount = maths.times(unit(over), 1 / under);
        expect(equal(quantityFrom(String(amount), [unit]), amount)).toBe(true);
        expect(equal(quantityFrom(JSON.parse(JSON.stringify(amount)), [unit]), amount)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it.each(["de", "en-GB", "fr", "sv"])("is read back with the marks of %s", (locale) => {
    fc.assert(
      fc.property(fc.constantFrom(...all), amounts, (unit, [over, under]) => {
        const rounded = maths.asText(maths.times(unit(over), 1 / under), { unit, decimals: 2, locale });
        const read = quantityFrom(rounded, [unit], { locale });
        expect(maths.asText(read, { unit, decimals: 2, locale })).toBe(rounded);
      }),
      { numRuns: 1000 },
    );
  });

  it("in mixed units is read back as the same to the step", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40_000 }), (quarters) => {
        const length = inches(quarters / 4);
        const text = maths.asText(length, { unit: [yards, inches], step: "1/4" });
        expect(equal(lengthFrom(text, [yards, inches]), length)).toBe(true);
        const mass = maths.ounces(quarters / 4);
        const read = maths.massFrom(maths.asText(mass, { unit: [maths.pounds, maths.ounces], step: "1/4" }), [
          maths.pounds,
          maths.ounces,
        ]);
        expect(equal(read, mass)).toBe(true);
      }),
    );
  });
});
