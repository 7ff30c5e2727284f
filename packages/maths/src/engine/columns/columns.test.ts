import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countFromWrapping, endsForWidth, foldedCount, warpLength } from "../../handbook/index.js";
import {
  centimetres,
  cottonCount,
  endsPerInch,
  grains,
  inches,
  percentLost,
  worstedCount,
  yards,
} from "../../units/index.js";
import { forColumns } from "./index.js";

const units = {
  finishedLength: inches,
  hemEachEnd: inches,
  loomToFinished: percentLost,
  takeUp: percentLost,
  loomWaste: centimetres,
};
const warps = forColumns(warpLength, units, yards);
const rest = { hemEachEnd: 1, loomToFinished: 10, takeUp: 8, loomWaste: 76.2 };

describe("a calculation over columns", () => {
  it("gives each row what the calculation gives it, over any number of rows", () => {
    const row = fc.record({
      pieces: fc.integer({ min: 1, max: 40 }),
      finishedLength: fc.integer({ min: 1, max: 2000 }).map((n) => n / 16),
    });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 3000 }), (rows) => {
        const pieces = rows.map((one) => one.pieces);
        const answers = warps({
          pieces,
          finishedLength: Float64Array.from(rows, (one) => one.finishedLength),
          ...rest,
        });
        expect(answers).toHaveLength(rows.length);
        for (const at of [0, Math.floor(rows.length / 2), rows.length - 1]) {
          const exact = warpLength({
            pieces: pieces[at] ?? 0,
            finishedLength: inches(rows[at]?.finishedLength ?? 0),
            hemEachEnd: inches(1),
            loomToFinished: percentLost(10),
            takeUp: percentLost(8),
            loomWaste: centimetres("76.2"),
          }).in(yards);
          expect(Math.abs((answers[at] ?? 0) - exact)).toBeLessThan(1e-13 * exact);
        }
      }),
      { numRuns: 20 },
    );
  });

  it("rounds each row as the calculation does, residues of doubles among them", () => {
    const ends = forColumns(endsForWidth, { sett: endsPerInch, widthInReed: inches }, null);
    const third = 40 / 3;
    expect([...ends({ sett: 24, widthInReed: [third, 26.25], threadingRepeat: [4, 8], balanceEnds: [0, 1] })]).toEqual([
      320, 633,
    ]);
  });

  it("answers in the unit wanted, whatever the count system asked for", () => {
    const counts = forColumns(countFromWrapping, { length: yards, mass: grains, system: cottonCount }, worstedCount);
    expect(counts({ length: 120, mass: [20, 40] })[1]).toBeCloseTo(37.5, 12);
  });

  it("of a list takes a column for each member, however many, and names the member that is wrong", () => {
    const folds = forColumns(foldedCount, { counts: cottonCount }, cottonCount);
    expect(
      [
        ...folds({
          counts: [
            [60, 40],
            [40, 20],
          ],
        }),
      ].map((n) => n.toFixed(9)),
    ).toEqual(["24.000000000", "13.333333333"]);
    expect(folds({ counts: [40, 80, Float64Array.of(120)] })[0]).toBeCloseTo(240 / 11, 12);
    expect(() => folds({ counts: [] })).toThrow("a list of columns");
    expect(() =>
      folds({
        counts: [
          [60, 40],
          [40, 0],
        ],
      }),
    ).toThrow("{ counts[1][1] })");
  });

  it("takes any array of numbers, but none of big integers", () => {
    const arrays = [[21, 22], Float32Array.of(21, 22), Int16Array.of(21, 22), Uint8ClampedArray.of(21, 22)];
    // 8 × 24 ÷ 0.9 ÷ 0.92 + 30 in, in yards.
    for (const finishedLength of arrays)
      expect(warps({ pieces: 8, finishedLength, ...rest })[1]).toBeCloseTo(7.27455716586151, 12);
    for (const finishedLength of [BigInt64Array.of(21n), new DataView(new ArrayBuffer(8)), "21"] as unknown as number[])
      expect(() => warps({ pieces: 8, finishedLength, ...rest })).toThrow("a column of numbers");
  });

  it("says what its answers are, and in what unit", () => {
    expect(warps({ pieces: [1, 2], finishedLength: 21, ...rest }).label).toBe("warp length (yd)");
    const ends = forColumns(endsForWidth, { sett: endsPerInch, widthInReed: inches }, null);
    const one = ends({ sett: 24, widthInReed: 10, threadingRepeat: 4, balanceEnds: 0 });
    expect(one.label).toBe("ends for width (ends)");
  });

  it("of no rows is no rows, and of single numbers one row", () => {
    expect(warps({ pieces: [], finishedLength: [], ...rest })).toHaveLength(0);
    expect(warps({ pieces: 8, finishedLength: 21, ...rest })[0]).toBeCloseTo(7.00617283950617, 12);
  });

  it.each([
    ["a whole number", { pieces: [1, 2, 2.5], finishedLength: 21 }, "{ pieces[2] })"],
    ["a number above zero", { pieces: 1, finishedLength: [21, 0] }, "{ finishedLength[1] })"],
    ["a number", { pieces: 1, finishedLength: [21, Number.NaN] }, "{ finishedLength[1] })"],
    ["a loss below 100 %", { pieces: 1, finishedLength: [21, 20], takeUp: [8, 100] }, "{ takeUp[1] })"],
    ["columns of one length", { pieces: [1, 2, 3], finishedLength: [21, 20] }, "a column of 3 numbers"],
    ["every column", { pieces: 1 }, "{ finishedLength })"],
  ])("wants %s and names the row", (_, columns, place) => {
    expect(() => warps({ ...rest, ...columns })).toThrow(place);
  });

  it("names the row past the first block", () => {
    const pieces = Array.from({ length: 5000 }, (_, row) => (row === 4321 ? -1 : 1));
    expect(() => warps({ pieces, finishedLength: 21, ...rest })).toThrow("{ pieces[4321] })");
  });

  it("refuses a missing or wrong unit", () => {
    expect(() => forColumns(warpLength, { ...units, takeUp: inches }, yards)).toThrow("{ takeUp })");
    expect(() => forColumns(warpLength, {}, yards)).toThrow("finishedLength");
    expect(() => forColumns(warpLength, units, null)).toThrow("forColumns({ unit }): expected a unit of length");
    expect(() => forColumns(foldedCount, {}, cottonCount)).toThrow("counts");
  });
});
