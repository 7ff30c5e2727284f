import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allUnits, calculations, validInput } from "#ci/inputs.js";
import { napkins as eight } from "#ci/napkins.js";
import {
  convertCount,
  countFromWrapping,
  endsForWidth,
  foldedCount,
  settByDiameter,
  settByIntersections,
  threadForCloth,
  totalCover,
  warpLength,
} from "../../handbook/index.js";
import {
  cottonCount,
  diametersPerInch,
  endsPerInch,
  grains,
  inches,
  metres,
  percentAdded,
  percentLost,
  percentOf,
  pounds,
  tex,
  yards,
  yardsPerPound,
} from "../../units/index.js";
import { check } from "../../check/index.js";
import { forColumns } from "../columns/index.js";
import type { Calculation } from "../formula/index.js";
import { times } from "../quantity/index.js";
import type { Quantity } from "../quantity/index.js";
import { QuantityError, reading } from "../refusal.js";
import { spreadsheetFormula } from "../spreadsheet/index.js";
import { asText, explain } from "../working/index.js";
import { rearrangement, solveFor } from "./index.js";

const { pieces, loomWaste, ...woven } = eight;
const napkins = { ...woven, loomWaste };

describe("a formula turned round", () => {
  const piecesFromWarp = solveFor(warpLength, "pieces", "warp", { rounding: "roundDown" });

  it("gives the pieces a warp is long enough for, rounded down by a line of its own", () => {
    // 7 yd = 252 in; less 30 is 222; × 0.92 × 0.9 ÷ 23 = 7.99…
    expect(piecesFromWarp({ ...napkins, warp: yards(7) })).toBe(7);
    // 8 × 23 ÷ 0.9 ÷ 0.92 + 30 = 252.22… in
    expect(piecesFromWarp({ ...napkins, warp: inches("252.3") })).toBe(8);
    const text = asText(explain(piecesFromWarp, { ...napkins, warp: yards(7) }));
    expect(text).toContain(
      "onLoom × (1 − loomToFinished) ÷ cutLength".replace(/([A-Z])/gu, (c) => ` ${c.toLowerCase()}`),
    );
    expect(text).toContain("roundDown(unrounded)");
  });

  it("has a cell and columns, and is checked, as any calculation is", () => {
    const cells = {
      finishedLength: ["A1", inches],
      hemEachEnd: ["A2", inches],
      loomToFinished: ["A3", percentLost],
      takeUp: ["A4", percentLost],
      loomWaste: ["A5", inches],
      warp: ["A6", yards],
    } as const;
    const cell = spreadsheetFormula(piecesFromWarp, cells, null);
    expect(cell).toMatch(/^=(?:FLOOR|ROUNDDOWN|INT)\(/u);
    const units = {
      finishedLength: inches,
      hemEachEnd: inches,
      loomToFinished: percentLost,
      takeUp: percentLost,
      loomWaste: inches,
      warp: yards,
    };
    const column = forColumns(piecesFromWarp, units, null);
    const rows = { finishedLength: 21, hemEachEnd: 1, loomToFinished: 10, takeUp: 8, loomWaste: 30, warp: [5, 7, 9] };
    expect(Array.from(column(rows))).toEqual([5, 7, 10]);
    const waste = solveFor(warpLength, "loomWaste", "warp");
    const { right, slips } = check(waste, { ...woven, pieces, warp: yards(8) }, { written: "65.8", unit: inches });
    expect({ right, slips }).toEqual({ right: true, slips: [] });
  });

  it("asks for the unit of a percentage, and takes that of an input of the same kind", () => {
    const crimp = solveFor(threadForCloth, "crimp", "thread", { in: percentAdded });
    expect(crimp({ clothLength: yards(40), thread: yards(42) }).in(percentAdded)).toBe(5);
    expect(() => solveFor(threadForCloth, "crimp", "thread")).toThrow("a unit for");
    const other = solveFor(totalCover, "weftCover", "totalCover");
    expect(other({ warpCover: percentOf(50), totalCover: percentOf(70) }).in(percentOf)).toBe(40);
  });

  it("counts a count in the system asked for, whatever unit it comes in", () => {
    const length = solveFor(countFromWrapping, "length", "count");
    const given = { mass: grains(20), system: cottonCount };
    expect(length({ ...given, count: cottonCount(50) }).in(yards)).toBeCloseTo(120, 12);
    const inTex = solveFor(countFromWrapping, "mass", "count");
    expect(inTex({ length: metres(1000), system: cottonCount, count: cottonCount(20) }).in(pounds)).toBeCloseTo(
      1000 / 0.9144 / 840 / 20,
      12,
    );
    expect(() => length({ ...given, count: tex(20) as never })).toThrow("count");
  });

  it("gathers an input that stands there twice", () => {
    const ends = solveFor(settByIntersections, "ends", "sett", { rounding: "nearest" });
    expect(ends({ diameters: diametersPerInch(135), sett: endsPerInch(81), intersections: 2 })).toBe(3);
    const count = solveFor(settByDiameter, "count", "sett");
    const sett = endsPerInch("26.08447814314099");
    expect(count({ constant: 0.9, sett, ends: 2, intersections: 2 }).in(yardsPerPound)).toBeCloseTo(3360, 9);
  });

  it.each<[string, () => unknown, string]>([
    ["under a rounding", () => solveFor(endsForWidth, "widthInReed", "ends"), "stands under a rounding"],
    ["for a list", () => solveFor(foldedCount, "counts", "folded" as never), "it is a list"],
    ["for a unit", () => solveFor(countFromWrapping, "system", "count"), "it is a choice"],
    ["for what is no input", () => solveFor(warpLength, "toString" as never, "warp"), "pieces or finishedLength"],
    ["for what is no calculation", () => solveFor(convertCount as never, "count" as never, "x"), "a calculation"],
    ["for an answer of another name", () => solveFor(warpLength, "takeUp", "length"), '"warp"'],
    ["for pieces without a rounding", () => solveFor(warpLength, "pieces", "warp"), "how to round"],
    ["for a length with one", () => solveFor(warpLength, "loomWaste", "warp", { rounding: "roundUp" }), "no rounding"],
    [
      "for a rounding that is none",
      () => solveFor(warpLength, "pieces", "warp", { rounding: "off" as never }),
      '"roundUp"',
    ],
    [
      "for a unit of another kind",
      () => solveFor(warpLength, "takeUp", "warp", { in: percentAdded as never }),
      "a unit",
    ],
  ])("is refused with the reason %s", (_, call, reason) => {
    expect(call).toThrow(reason);
  });
});

function isNothing(one: unknown): boolean {
  if (Array.isArray(one)) return one.length === 0 || one.some(isNothing);
  return one === 0 || (typeof one === "object" && one !== null && "value" in one && one.value === "0");
}

describe("every input of every calculation", () => {
  const trips = { made: 0, refused: 0, inputs: 0, turned: 0 };
  const inputs = calculations.flatMap(([name, calculation]) =>
    Object.keys(calculation.declaration.inputs).map((field) => [name, field, calculation] as const),
  );

  it.each(inputs)(
    "%s for its %s: comes back from the answer, or is refused with the reason",
    (_name, field, formula) => {
      trips.inputs += 1;
      const { declaration } = formula;
      const input = declaration.inputs[field] ?? expect.fail("no such input");
      const found = rearrangement(declaration, field);
      const answer = found.ok ? found.answer : (declaration.lines.at(-1)?.name ?? "");
      const unit =
        input.what === "quantity" ? allUnits.find(({ dimension }) => dimension === input.dimension) : undefined;
      const turned = {
        ...(input.what === "whole" ? { rounding: "nearest" as const } : {}),
        ...(unit === undefined ? {} : { in: unit }),
      };
      const solve = (): Calculation<Record<string, unknown>, unknown> =>
        solveFor(formula, field, answer, turned as never);
      if (!found.ok) {
        expect(solve).toThrow(found.why);
        return;
      }
      trips.turned += 1;
      const back = solve();
      fc.assert(
        fc.property(validInput(formula), (given) => {
          const { [field]: was, ...others } = given;
          let there: unknown = null;
          let got: unknown;
          try {
            there = formula(given);
            trips.made += 1;
            got = back({ ...others, [answer]: there });
          } catch (error) {
            if (!(error instanceof QuantityError)) throw error;
            if (there === null) return;
            expect(error.message).toContain("received nothing at the line");
            // Where there is none of something, no answer tells what the rest was.
            if (!Object.values(others).some(isNothing)) trips.refused += 1;
            return;
          }
          if (typeof there === "number" && !matters(formula, given, field, there)) return;
          const [a, b] = [got, was].map((one) => (typeof one === "number" ? one : inBase(one as Quantity<string>)));
          // An answer without a unit is a double: what it lacks in digits grows with how far the input is from mattering.
          const lost = declaration.result.what === "quantity" ? 1e-12 : 1e-8;
          expect(Math.abs((a ?? 0) - (b ?? 1))).toBeLessThanOrEqual(lost * Math.max(1, Math.abs(b ?? 1)));
        }),
        { numRuns: 85 },
      );
    },
  );

  it("made 24,000 trips there and back, and was refused only where an answer cannot tell", () => {
    process.stdout.write(
      `${String(trips.turned)} of ${String(trips.inputs)} inputs can be turned to; ${String(trips.made)} trips, ${String(trips.refused)} refused\n`,
    );
    expect(trips.made).toBeGreaterThan(24000);
    expect(trips.refused / trips.made).toBeLessThan(0.002);
  });
});

/** Whether a millionth more of an amount changes an answer by more than the last digits of a double. */
function matters(formula: (input: never) => unknown, given: object, field: string, answer: number): boolean {
  const amount = (given as Readonly<Record<string, unknown>>)[field];
  if (typeof amount !== "object") return true;
  const moved = reading(() => formula({ ...given, [field]: times(amount as Quantity<string>, "0.999999") } as never));
  return !moved.ok || Math.abs((moved.value as number) - answer) > 1e-12 * Math.abs(answer);
}

function inBase(quantity: Quantity<string>): number {
  const unit = allUnits.find(({ dimension, name }) => dimension === quantity.dimension && name === quantity.unit);
  return Number(quantity.value) * ((unit?.scale[0] ?? Number.NaN) / (unit?.scale[1] ?? 1));
}
