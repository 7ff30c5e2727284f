import { describe, expect, it } from "vitest";
import { countFromWrapping, foldedCount, lossFromMeasures, warpLength } from "../../handbook/index.js";
import { cottonCount, grains, inches, percentLost, worstedCount, yards } from "../../units/index.js";
import { isDefinedName, spreadsheetLines } from "./index.js";

const place = (name: string): string => name.replace(/[A-Z]/gu, (letter) => `_${letter.toLowerCase()}`);

const warpCells = {
  pieces: "pieces",
  finishedLength: ["finished_length", inches],
  hemEachEnd: ["B3", inches],
  loomToFinished: ["B4", percentLost],
  takeUp: ["B5", percentLost],
  loomWaste: ["loom_waste", yards],
} as const;

describe("a working in cells", () => {
  it("turns an input into the unit of work first, then goes line by line to the answer", () => {
    expect(
      spreadsheetLines(warpLength, warpCells, yards, place).map(({ name, formula, unit }) => [name, formula, unit]),
    ).toEqual([
      ["loomWasteConverted", "=loom_waste*36", "in"],
      ["cutLength", "=finished_length+2*B3", "in"],
      ["onLoom", "=pieces*cut_length/(1-B4/100)", "in"],
      ["threadInCloth", "=on_loom/(1-B5/100)", "in"],
      ["warp", "=thread_in_cloth+loom_waste_converted", "in"],
      ["answer", "=warp/36", "yd"],
    ]);
  });

  it("says every line in words", () => {
    const words = spreadsheetLines(warpLength, warpCells, inches, place).map((line) => line.words);
    expect(words).toEqual([
      "loom waste × 36",
      "finished length + 2 × hem each end",
      "pieces × cut length ÷ (1 − loom to finished)",
      "on loom ÷ (1 − take-up)",
      "thread in cloth + loom waste",
    ]);
  });

  it("sums a list in one cell, and counts in the system asked for", () => {
    expect(spreadsheetLines(foldedCount, { counts: ["B1:B3", cottonCount] }, worstedCount, place)).toEqual([
      { name: "folded", words: "1 ÷ Σ(1 ÷ counts)", formula: "=1/SUMPRODUCT(1/B1:B3)", unit: "Ne" },
      { name: "answer", words: "folded × 3 ÷ 2", formula: "=folded*3/2", unit: "worsted count" },
    ]);
    const wrapping = { length: ["A1", yards], mass: ["A2", grains], system: cottonCount } as const;
    expect(spreadsheetLines(countFromWrapping, wrapping, cottonCount, place).map(({ formula }) => formula)).toEqual([
      "=A1/840",
      "=A2/7000",
      "=hanks/weight",
    ]);
  });

  it("gives a percentage after the fraction it is", () => {
    const cells = { before: ["A1", inches], after: ["A2", inches] } as const;
    const lines = spreadsheetLines(lossFromMeasures, cells, percentLost, place);
    expect(lines.at(-1)).toMatchObject({ name: "answer", unit: "%" });
    expect(lines.at(-2)).toMatchObject({ unit: "" });
  });

  it("is refused where a line would stand at no address", () => {
    expect(() => spreadsheetLines(warpLength, warpCells, yards, () => "R1C1")).toThrow(
      'expected a cell, received the text "R1C1"',
    );
    expect(() => spreadsheetLines(warpLength, warpCells, yards, () => "")).toThrow("spreadsheetLines");
  });
});

describe("a defined name", () => {
  it.each(["pieces", "loom_waste", "warp.cut_length", "tex", "count2"])("may be %s", (name) => {
    expect(isDefinedName(name)).toBe(true);
  });

  it.each(["r1c1", "epi1", "abc12", "r", "c", "a", "Pieces", "loom waste", "2nd", "_x", "a-b", "", "x".repeat(300)])(
    "is never %j, which is an address, too short or no name",
    (name) => {
      expect(isDefinedName(name)).toBe(false);
    },
  );
});
