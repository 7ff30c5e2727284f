import { describe, expect, it } from "vitest";
import { countFromWrapping, endsForWidth, foldedCount, settByDiameter, warpLength } from "../../handbook/index.js";
import {
  centimetres,
  cottonCount,
  endsPerInch,
  grains,
  inches,
  percentLost,
  worstedCount,
  yards,
  yardsPerPound,
} from "../../units/index.js";
import { spreadsheetFormula } from "./spreadsheet-formula.js";

const warpCells = {
  pieces: "B1",
  finishedLength: ["B2", inches],
  hemEachEnd: ["B3", inches],
  loomToFinished: ["B4", percentLost],
  takeUp: ["B5", percentLost],
  loomWaste: ["B6", inches],
} as const;

describe("a spreadsheet cell", () => {
  it("holds the whole formula, each input converted where it stands", () => {
    expect(spreadsheetFormula(warpLength, warpCells, yards)).toBe("=(B1*(B2+2*B3)/(1-B4/100)/(1-B5/100)+B6)/36");
    expect(spreadsheetFormula(foldedCount, { counts: ["B1:B3", cottonCount] }, cottonCount)).toBe(
      "=1/SUMPRODUCT(1/B1:B3)",
    );
    const cells = {
      sett: ["$B$1", endsPerInch],
      widthInReed: ["C1", centimetres],
      threadingRepeat: "D1",
      balanceEnds: "E1",
    } as const;
    expect(spreadsheetFormula(endsForWidth, cells, null)).toBe("=-INT(-ROUND(($B$1*C1*50/127-E1)/D1,9))*D1+E1");
    const rule = { constant: "A1", count: ["A2", yardsPerPound], ends: "A3", intersections: "A4" } as const;
    expect(spreadsheetFormula(settByDiameter, rule, endsPerInch)).toBe("=A1*SQRT(A2)*A3/(A3+A4)");
    const wrapping = { length: ["A1", yards], mass: ["A2", grains], system: cottonCount } as const;
    expect(spreadsheetFormula(countFromWrapping, wrapping, cottonCount)).toBe("=A1/840/(A2/7000)");
    expect(spreadsheetFormula(countFromWrapping, wrapping, worstedCount)).toBe("=A1/840/(A2/7000)*3/2");
  });

  it.each(["b1", "B0", "B1:B3", "B1;C1", "ABCD1", "1B", "B", "", "B1)", "=B1", "B1:"])(
    "is not written for the address %j",
    (address) => {
      expect(() => spreadsheetFormula(warpLength, { ...warpCells, pieces: address }, yards)).toThrow(
        "{ pieces }): expected a cell",
      );
    },
  );

  it("refuses a cell without a unit, with a wrong unit, and an answer in another kind", () => {
    expect(() => spreadsheetFormula(warpLength, { ...warpCells, loomWaste: "B6" }, yards)).toThrow("names the unit");
    expect(() => spreadsheetFormula(warpLength, { ...warpCells, loomWaste: ["B6", grains] }, yards)).toThrow(
      "{ loomWaste }): expected a unit of length",
    );
    expect(() => spreadsheetFormula(warpLength, warpCells, grains as never)).toThrow(
      "{ unit }): expected a unit of length, received the unit grains",
    );
    expect(() => spreadsheetFormula(warpLength, warpCells, null)).toThrow(
      "{ unit }): expected a unit of length, received nothing",
    );
  });
});
