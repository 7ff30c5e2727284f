import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { clothQuantities, sunnano, wolfensberger1921 } from "#ci/sources.js";
import type { Unit } from "../../engine/quantity/index.js";
import type { IndirectCount, Length } from "../../units/index.js";
import { cottonCount, kilograms, metres, metresPerKilogram, percentAdded, pounds, yards } from "../../units/index.js";
import { warpMass } from "./warp-mass.js";

const at = (page: number, disposition: number): string => `p. ${String(page)}, disposition ${String(disposition)}`;

describe("mass of a warp by an indirect count", () => {
  type Row = readonly [string, Citation, number, Length, IndirectCount, waste: number, Unit<"mass">];
  const rows: readonly Row[] = [
    [
      "504 ends of 110 yards of 100/2 cotton, 4 % of waste",
      published(wolfensberger1921, at(99, 6), "1.37", "858/625"),
      ...([504, yards(110), cottonCount(50), 4, pounds] as const),
    ],
    [
      "250 ends of 5.6 m of rug warp, 12/6 at 1400 m to the kilogram and count",
      published(sunnano, "whole page", "0.5", "0.5"),
      ...([250, metres("5.6"), metresPerKilogram(2800), 0, kilograms] as const),
    ],
    [
      "3240 ends of 42 yards of 32s",
      published(clothQuantities, "example", "", "5.0625"),
      ...([3240, yards(42), cottonCount(32), 0, pounds] as const),
    ],
  ];
  for (const [title, citation, ends, warpLength, count, waste, unit] of rows) {
    cited(title, citation, warpMass, [{ ends, warpLength, count, allowance: percentAdded(waste) }], unit);
  }
  it("grows with the ends and with the waste", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), fc.integer({ min: 0, max: 50 }), (ends, waste) => {
        const input = { ends, warpLength: yards(8), count: cottonCount(4), allowance: percentAdded(waste) };
        const mass = warpMass(input).in(pounds);
        expect(warpMass({ ...input, ends: ends + 1 }).in(pounds)).toBeGreaterThan(mass);
        expect(warpMass({ ...input, allowance: percentAdded(waste + 1) }).in(pounds)).toBeGreaterThan(mass);
      }),
    );
  });
  it("takes the allowance as a percentage added, not lost", () => {
    const input = { ends: 400, warpLength: yards(8), count: cottonCount(4) };
    expect(() => warpMass(input as never)).toThrow(/allowance/u);
    expect(() => warpMass({ ...input, allowance: pounds(1) as never })).toThrow("allowance");
  });
});
