import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { lingRoth1913 } from "#ci/sources.js";
import { inUnit } from "../engine/quantity/index.js";
import { endsPerCentimetre, endsPerInch, picksPerCentimetre, picksPerInch } from "./closeness.js";

type Figure = readonly [perInch: number, printed: string, differs?: string];

/** Old linens as the table has them; its metric columns follow no one rounding. */
const specimens: readonly (readonly [specimen: number, ends: Figure, picks: Figure])[] = [
  [2, [10, "4"], [17, "6.7"]],
  [3, [224, "88"], [40, "15.6", "the table follows no one rounding: 15.75 is exact"]],
  [10, [32, "12.6"], [60, "23.6"]],
  [11, [80, "31.5"], [36, "14.1", "cut off, not rounded"]],
  [
    12,
    [96, "37.4", "misprint: 96 to the inch are 37.8"],
    [40, "15.6", "the table follows no one rounding: 15.75 is exact"],
  ],
  [13, [80, "19", "misprint: 80 to the inch are 31.5"], [36, "14.1", "cut off, not rounded"]],
  [15, [64, "25"], [36, "14.1", "cut off, not rounded"]],
];

describe("closeness to the inch and to the centimetre", () => {
  for (const [specimen, [ends, printedEnds, endsDiffer], [picks, printedPicks, picksDiffer]] of specimens) {
    const at = `cloth table, specimen ${String(specimen)}`;
    cited(
      `${String(ends)} ends to the inch, specimen ${String(specimen)}`,
      published(lingRoth1913, at, printedEnds, `${String(50 * ends)}/127`, endsDiffer),
      inUnit,
      [endsPerInch(ends), endsPerCentimetre],
      endsPerCentimetre,
    );
    cited(
      `${String(picks)} picks to the inch, specimen ${String(specimen)}`,
      published(lingRoth1913, at, printedPicks, `${String(50 * picks)}/127`, picksDiffer),
      inUnit,
      [picksPerInch(picks), picksPerCentimetre],
      picksPerCentimetre,
    );
  }

  it("are one closeness: 25.4 to the inch are 10 to the centimetre", () => {
    expect(endsPerInch("25.4").in(endsPerCentimetre)).toBe(10);
    expect(picksPerCentimetre(10).in(picksPerInch)).toBe(25.4);
  });
});
