import { cited, published } from "#ci/cited.js";
import { refusalOf } from "#ci/refusal-of.js";
import { sharma2005 } from "#ci/sources.js";
import { converter, differenceCiede2000 } from "culori/fn";
import { modeLab65, modeRgb, modeXyz65, useMode } from "culori/fn";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { colourDifference } from "./colour-difference.js";
import { labOf } from "./lab-of.js";
import type { LabColour } from "./lab-of.js";

/** Pair, its two colours, the difference as printed, and worked out to 18 digits from the equations of the paper. */
type Pair = readonly [pair: number, one: LabColour, other: LabColour, printed: string, exact: string];

/** The figures were read in the tests of two colour libraries that quote the table, which have these of its 34 pairs. */
const TABLE_1: readonly Pair[] = [
  [2, [50, 3.1571, -77.2803], [50, 0, -82.7485], "2.8615", "2.86151017474749667"],
  [3, [50, 2.8361, -74.02], [50, 0, -82.7485], "3.4412", "3.44119059869072352"],
  [4, [50, -1.3802, -84.2814], [50, 0, -82.7485], "1.0000", "0.999998864752465705"],
  [5, [50, -1.1848, -84.8006], [50, 0, -82.7485], "1.0000", "1.0000047010743299"],
  [8, [50, -1, 2], [50, 0, 0], "2.3669", "2.36685881917175206"],
  [9, [50, 2.49, -0.001], [50, -2.49, 0.0009], "7.1792", "7.17917201134897737"],
  [10, [50, 2.49, -0.001], [50, -2.49, 0.001], "7.1792", "7.17916264000156279"],
  [11, [50, 2.49, -0.001], [50, -2.49, 0.0011], "7.2195", "7.21947215228575299"],
  [12, [50, 2.49, -0.001], [50, -2.49, 0.0012], "7.2195", "7.21947421247140013"],
  [13, [50, -0.001, 2.49], [50, 0.0009, -2.49], "4.8045", "4.80452168577475156"],
  [14, [50, -0.001, 2.49], [50, 0.001, -2.49], "4.8045", "4.80452450821176752"],
  [15, [50, -0.001, 2.49], [50, 0.0011, -2.49], "4.7461", "4.74607111380668403"],
  [16, [50, 2.5, 0], [50, 0, -2.5], "4.3065", "4.30648209582705824"],
  [17, [50, 2.5, 0], [73, 25, -18], "27.1492", "27.1492313007462551"],
  [18, [50, 2.5, 0], [61, -5, 29], "22.8977", "22.8976924698069056"],
  [19, [50, 2.5, 0], [56, -27, -3], "31.9030", "31.9030046468638833"],
  [21, [50, 2.5, 0], [50, 3.1736, 0.5854], "1.0000", "1.00002634337025636"],
  [22, [50, 2.5, 0], [50, 3.2972, 0], "1.0000", "0.999972872973026738"],
  [24, [50, 2.5, 0], [50, 3.2592, 0.335], "1.0000", "1.00003476171517363"],
  [25, [60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], "1.2644", "1.26442001359918591"],
  [26, [63.0109, -31.0961, -5.8663], [62.8187, -29.7946, -4.0864], "1.2630", "1.26295929826224062"],
  [27, [61.2901, 3.7196, -5.3901], [61.4292, 2.248, -4.962], "1.8731", "1.87307050011836185"],
  [28, [35.0831, -44.1164, 3.7933], [35.0232, -40.0716, 1.5901], "1.8645", "1.86449523415947216"],
  [30, [36.4612, 47.858, 18.3852], [36.2715, 50.5065, 21.2231], "1.4146", "1.41457792249380583"],
  [31, [90.8027, -2.0831, 1.441], [91.1528, -1.6435, 0.0447], "1.4441", "1.44412907809302508"],
  [34, [2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], "0.9082", "0.908232839602524811"],
];

const screen = fc.integer({ min: 0, max: 0xffffff }).map((colour) => `#${colour.toString(16).padStart(6, "0")}`);

describe("the difference of two colours", () => {
  for (const [pair, one, other, printed, exact] of TABLE_1) {
    cited(
      `the colours of pair ${String(pair)}`,
      published(sharma2005, `table 1, pair ${String(pair)}`, printed, exact),
      colourDifference,
      [{ one, other }],
    );
  }

  it.each(TABLE_1)("is the same the other way round for pair %i", (_, one, other, printed) => {
    expect(colourDifference({ one: other, other: one }).toFixed(4)).toBe(printed);
  });

  it("is that of a colour library for any two colours of a screen", () => {
    for (const mode of [modeRgb, modeXyz65, modeLab65]) useMode(mode);
    const [libraryLab, libraryDifference] = [converter("lab65"), differenceCiede2000()];
    fc.assert(
      fc.property(screen, screen, (one, other) => {
        const library = libraryLab(one);
        if (library === undefined) throw new Error(`the library cannot read ${one}`);
        const [l, a, b] = labOf(one);
        expect([l - library.l, a - library.a, b - library.b].every((off) => Math.abs(off) < 1e-6)).toBe(true);
        expect(colourDifference({ one: [l, a, b], other: labOf(other) })).toBeCloseTo(libraryDifference(one, other), 6);
      }),
    );
  });

  it("of a grey and a colour has no hue to turn, and of a colour and itself is nothing", () => {
    expect(colourDifference({ one: labOf("#808080"), other: labOf("#808080") })).toBe(0);
    expect(colourDifference({ one: [50, 0, 0], other: [60, 0, 0] })).toBeGreaterThan(0);
  });

  it("is refused for what is no colour, every place named", () => {
    expect(refusalOf(() => colourDifference({ one: [50, 0] as never, other: [Number.NaN, 0, 0] }))).toMatchObject({
      code: "wrong-kind",
      path: ["one"],
    });
    expect(refusalOf(() => colourDifference({ one: [101, 0, 0], other: [0, 0, 0] }))).toMatchObject({
      code: "out-of-range",
      path: ["one"],
    });
    expect(colourDifference({ one: [100, 0, 0], other: [0, 0, 0] })).toBeGreaterThan(99);
  });
});

describe("a colour of a screen", () => {
  it("is read in three digits as in six, in any letters", () => {
    expect(labOf("#A32")).toEqual(labOf("#aa3322"));
  });

  it.each([
    ["navy", "unreadable"],
    ["#12345", "unreadable"],
    ["", "unreadable"],
    [0x112233, "wrong-kind"],
    [undefined, "missing"],
    [null, "missing"],
  ])("is refused as %s", (given, code) => {
    expect(refusalOf(() => labOf(given as never))).toMatchObject({ code, function: "labOf" });
  });
});
