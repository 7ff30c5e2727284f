import { converter, differenceCiede2000 } from "culori/fn";
import { modeLab65, modeRgb, modeXyz65, useMode } from "culori/fn";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { colourDifference } from "./colour-difference.js";
import { labOf } from "./screen-colour.js";
import type { LabColour } from "./screen-colour.js";

/** Pair, its two colours, and the difference as printed. */
type Pair = readonly [pair: number, one: LabColour, other: LabColour, printed: string];

/**
 * Sharma, Wu and Dalal, The CIEDE2000 color-difference formula: implementation notes, supplementary test data, and
 * mathematical observations, Color Research and Application 30(1), 2005, pp. 21-30, table 1; the figures were read in the
 * tests of two colour libraries that quote it, which have these of its 34 pairs.
 */
const TABLE_1: readonly Pair[] = [
  [2, [50, 3.1571, -77.2803], [50, 0, -82.7485], "2.8615"],
  [3, [50, 2.8361, -74.02], [50, 0, -82.7485], "3.4412"],
  [4, [50, -1.3802, -84.2814], [50, 0, -82.7485], "1.0000"],
  [5, [50, -1.1848, -84.8006], [50, 0, -82.7485], "1.0000"],
  [8, [50, -1, 2], [50, 0, 0], "2.3669"],
  [9, [50, 2.49, -0.001], [50, -2.49, 0.0009], "7.1792"],
  [10, [50, 2.49, -0.001], [50, -2.49, 0.001], "7.1792"],
  [11, [50, 2.49, -0.001], [50, -2.49, 0.0011], "7.2195"],
  [12, [50, 2.49, -0.001], [50, -2.49, 0.0012], "7.2195"],
  [13, [50, -0.001, 2.49], [50, 0.0009, -2.49], "4.8045"],
  [14, [50, -0.001, 2.49], [50, 0.001, -2.49], "4.8045"],
  [15, [50, -0.001, 2.49], [50, 0.0011, -2.49], "4.7461"],
  [16, [50, 2.5, 0], [50, 0, -2.5], "4.3065"],
  [17, [50, 2.5, 0], [73, 25, -18], "27.1492"],
  [18, [50, 2.5, 0], [61, -5, 29], "22.8977"],
  [19, [50, 2.5, 0], [56, -27, -3], "31.9030"],
  [21, [50, 2.5, 0], [50, 3.1736, 0.5854], "1.0000"],
  [22, [50, 2.5, 0], [50, 3.2972, 0], "1.0000"],
  [24, [50, 2.5, 0], [50, 3.2592, 0.335], "1.0000"],
  [25, [60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], "1.2644"],
  [26, [63.0109, -31.0961, -5.8663], [62.8187, -29.7946, -4.0864], "1.2630"],
  [27, [61.2901, 3.7196, -5.3901], [61.4292, 2.248, -4.962], "1.8731"],
  [28, [35.0831, -44.1164, 3.7933], [35.0232, -40.0716, 1.5901], "1.8645"],
  [30, [36.4612, 47.858, 18.3852], [36.2715, 50.5065, 21.2231], "1.4146"],
  [31, [90.8027, -2.0831, 1.441], [91.1528, -1.6435, 0.0447], "1.4441"],
  [34, [2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], "0.9082"],
];

describe("the difference of two colours", () => {
  it.each(TABLE_1)("is the published one for pair %i", (_, one, other, printed) => {
    expect(colourDifference(one, other).toFixed(4)).toBe(printed);
    expect(colourDifference(other, one).toFixed(4)).toBe(printed);
  });

  it("is that of a colour library for any two colours of a screen", () => {
    for (const mode of [modeRgb, modeXyz65, modeLab65]) useMode(mode);
    const [libraryLab, libraryDifference] = [converter("lab65"), differenceCiede2000()];
    const screen = fc.integer({ min: 0, max: 0xffffff }).map((colour) => `#${colour.toString(16).padStart(6, "0")}`);
    fc.assert(
      fc.property(screen, screen, (one, other) => {
        const library = libraryLab(one);
        if (library === undefined) throw new Error(`the library cannot read ${one}`);
        const [l, a, b] = labOf(one);
        expect([l - library.l, a - library.a, b - library.b].every((off) => Math.abs(off) < 1e-6)).toBe(true);
        expect(colourDifference([l, a, b], labOf(other))).toBeCloseTo(libraryDifference(one, other), 6);
      }),
    );
  });

  it("of a grey and a colour has no hue to turn, and of a colour and itself is nothing", () => {
    expect(colourDifference(labOf("#808080"), labOf("#808080"))).toBe(0);
    expect(colourDifference([50, 0, 0], [60, 0, 0])).toBeGreaterThan(0);
  });
});
