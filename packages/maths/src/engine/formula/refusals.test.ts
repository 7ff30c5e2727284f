import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculations, plainRow, unitOf, unitsOf, validInput } from "#ci/inputs.js";
import { warpLength } from "../../handbook/index.js";
import { inches, percentLost, yards } from "../../units/index.js";
import { forColumns } from "../columns/index.js";
import type { Quantity } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import type { Input } from "./index.js";

function refusalOf(call: () => unknown): QuantityError {
  try {
    call();
  } catch (error) {
    if (error instanceof QuantityError) return error;
    throw error;
  }
  throw new Error("was not refused");
}

/** Amounts outside the range of one input, in every unit of its kind. */
function outOfRange({ what, dimension, range }: Input<unknown>): readonly unknown[] {
  if (what === "whole")
    return [-1, (range.atLeast ?? 0) - 1, ...(range.atMost === undefined ? [] : [range.atMost + 1])];
  if (what === "number") return [-1, ...(range.above === 0 ? [0, -0] : [])];
  return unitsOf(dimension).flatMap((unit) => [
    unit(-1),
    unit("-0.000000000000000000000001"),
    ...(range.above === 0 ? [unit(0)] : []),
    ...(range.below === 1 ? [unit(100), unit("100.5"), unit(1000)] : []),
    ...(range.atMost === 1 ? [unit("100.0000000001"), unit(200)] : []),
  ]);
}

/** Every range there is: what is counted begins at 0 or at 1, what is measured at or above nothing, a part ends at the whole. */
const RANGES: Readonly<Record<string, readonly object[]>> = {
  whole: [{ atLeast: 0 }, { atLeast: 1 }],
  number: [{ above: 0 }],
  loss: [{ atLeast: 0, below: 1 }],
  share: [{ above: 0, atMost: 1 }],
  addition: [{ atLeast: 0 }],
  quantity: [{ above: 0 }, { atLeast: 0 }],
  unit: [{}],
};

describe.each(calculations)("%s", (_name, calculation) => {
  const { declaration } = calculation;
  const inputs = Object.entries(declaration.inputs);
  const [sample = {}] = fc.sample(validInput(calculation, 1), { numRuns: 1, seed: 11 });

  it("takes every input in one of the ranges there are", () => {
    for (const [field, input] of inputs) {
      const { what, dimension, range } = input.member ?? input;
      const bounds = Object.fromEntries(Object.entries(range).filter(([, bound]) => bound !== null));
      expect((what === "quantity" ? RANGES[dimension] : undefined) ?? RANGES[what], field).toContainEqual(bounds);
    }
  });

  const single = inputs.filter(([, { what }]) => what !== "list" && what !== "unit" && what !== "word");
  if (single.length > 0) {
    it("refuses what lies outside the range of an input, whatever its unit, with the field and the range", () => {
      for (const [field, input] of single) {
        for (const value of outOfRange(input)) {
          const refusal = refusalOf(() => calculation({ ...sample, [field]: value }));
          expect(refusal, `${field}: ${String(value)}`).toMatchObject({
            code: "out-of-range",
            function: declaration.name,
            path: [field],
            expected: expect.stringMatching(/or more|more than|less than/u) as string,
          });
        }
      }
    });
  }

  if (inputs.some(([, { member }]) => member !== null)) {
    it("refuses an empty list, a list of one bad member among good ones, and a list with a hole, by its place", () => {
      for (const [field, input] of inputs) {
        const { member } = input;
        if (member === null) continue;
        const good = sample[field] as readonly unknown[];
        if (!input.mayBeEmpty)
          expect(refusalOf(() => calculation({ ...sample, [field]: [] }))).toMatchObject({
            code: "empty",
            path: [field],
          });
        const bad: readonly unknown[] = [
          undefined,
          null,
          Number.NaN,
          "20",
          { ...(good[0] as object) },
          ...outOfRange(member),
        ];
        for (const one of bad) {
          const list = [...good.slice(0, -1), one];
          expect(refusalOf(() => calculation({ ...sample, [field]: list })).path).toEqual([field, good.length - 1]);
        }
        const holed = Object.assign([...good], { length: good.length + 1 });
        const { faults } = refusalOf(() => calculation({ ...sample, [field]: holed }));
        expect(faults[0]).toMatchObject({ code: "missing", path: [field, good.length] });
      }
    });
  }

  it("refuses quantities of every other kind", () => {
    const kinds = [
      "length",
      "mass",
      "length per mass",
      "mass per length",
      "ends per length",
      "loss",
      "addition",
      "share",
    ];
    for (const [field, { what, dimension, orDimension }] of inputs) {
      for (const kind of kinds.filter((one) => one !== dimension && one !== orDimension)) {
        const [unit] = unitsOf(kind);
        const refusal = refusalOf(() => calculation({ ...sample, [field]: unit?.(1) }));
        expect(["wrong-kind", "not-a-number", "unknown-unit"], `${field} ${what}`).toContain(refusal.code);
        expect(refusal).toMatchObject({ function: declaration.name, path: [field] });
      }
    }
  });

  it("over columns is refused in just the rows where it is refused alone", () => {
    fc.assert(
      fc.property(validInput(calculation), (input) => {
        let refused = false;
        try {
          calculation(input);
        } catch {
          refused = true;
        }
        const { units, columns } = plainRow(input, declaration);
        const { dimension, what } = declaration.result;
        const unit = what === "quantity" ? (unitsOf(dimension)[0] ?? null) : null;
        const over = (): Float64Array => forColumns(calculation as never, units, unit)(columns);
        if (refused) expect(refusalOf(over)).toMatchObject({ code: "no-answer", function: "forColumns", path: [0] });
        else expect(Number.isFinite(over()[0])).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  it("cannot be changed from outside", () => {
    const all = (thing: object): readonly object[] => [
      thing,
      ...Object.values(thing).flatMap((part: unknown) => (typeof part === "object" && part !== null ? all(part) : [])),
    ];
    expect(all(declaration).every(Object.isFrozen)).toBe(true);
  });

  it("answers in a quantity of the kind it declares, fit for every further use", () => {
    for (const input of fc.sample(validInput(calculation), { numRuns: 10, seed: 12 })) {
      let answer: unknown = null;
      try {
        answer = calculation(input);
      } catch {
        continue;
      }
      if (typeof answer === "number") expect(Number.isFinite(answer)).toBe(true);
      else expect(unitOf(answer as Quantity<string>).dimension).toBe(declaration.result.dimension);
    }
  });
});

describe("two ways to say the same fault", () => {
  it("are told apart: a napkin of no length, and one whose length is a mass", () => {
    const losses = { loomToFinished: percentLost(10), takeUp: percentLost(100) };
    const input = { pieces: 0, finishedLength: inches(0), hemEachEnd: inches(-1), loomWaste: yards(1), ...losses };
    const { faults, message } = refusalOf(() => warpLength(input));
    expect(faults.map(({ code }) => code)).toEqual(Array(4).fill("out-of-range"));
    expect(message.split("\n")).toHaveLength(4);
    expect(faults[3]).toMatchObject({
      path: ["takeUp"],
      expected: expect.stringContaining("less than 100 %") as string,
      received: "100 % lost",
    });
  });
});
