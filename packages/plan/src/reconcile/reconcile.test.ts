import { endsPerInch, grams, inches, metres, picksPerInch, yards } from "@thrum/maths";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reconcile } from "./reconcile.js";
import type { PrintedFigure } from "./stated-figure.js";

describe("a misprint", () => {
  it("of 22 in at 24 to the inch with 180 ends is 528 ends, or 7 1/2 in wide", () => {
    const { changes } = reconcile([
      { figure: "sett", printed: "24", unit: endsPerInch },
      { figure: "widthInReed", printed: "22", unit: inches },
      { figure: "ends", printed: "180", unit: "count" },
    ]);
    const needed = Object.fromEntries(changes.map((change) => [change.figure, change.needed]));
    expect(needed["ends"]).toBe(528);
    expect(Math.abs((needed["widthInReed"] ?? 0) - 7.5)).toBeLessThanOrEqual(0.5);
  });

  it("of 181 m beside 160 yd is 146 m", () => {
    const { changes } = reconcile([
      { figure: "warpYarn", printed: "160", unit: yards },
      { figure: "warpYarnAgain", printed: "181", unit: metres },
    ]);
    expect(changes.find(({ figure }) => figure === "warpYarnAgain")?.needed).toBe(146);
  });

  it("in the total of a plan that agreed is found again, with every other figure left as it was", () => {
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 900 }), fc.integer({ min: 2, max: 20 }), (ends, length) => {
        const yarn = ends * length;
        const { changes } = reconcile([
          { figure: "ends", printed: String(ends), unit: "count" },
          { figure: "warpLength", printed: String(length), unit: yards },
          { figure: "warpYarn", printed: String(yarn + 7), unit: yards },
        ]);
        expect(changes.find(({ figure }) => figure === "warpYarn")?.needed).toBe(yarn);
      }),
    );
  });

  it("is told alone where two sums agree on it, though with 1600 yd taken roundly others would do", () => {
    // 20 × 16 = 320, and 320 × 5 = 1600; 310 × 5 = 1550 is 1600 roundly, and then sett or width could be the misprint.
    const { changes } = reconcile([
      { figure: "sett", printed: "20", unit: endsPerInch },
      { figure: "widthInReed", printed: "16.0", unit: inches },
      { figure: "ends", printed: "310", unit: "count" },
      { figure: "warpLength", printed: "5", unit: yards },
      { figure: "warpYarn", printed: "1600", unit: yards },
    ]);
    expect(changes.map(({ figure, needed }) => [figure, needed])).toEqual([["ends", 320]]);
  });

  it("of 6 to the inch, 21 in and 72 ends is known by its exchanged digits: 12 in", () => {
    const { changes } = reconcile([
      { figure: "sett", printed: "6", unit: endsPerInch },
      { figure: "widthInReed", printed: "21", unit: inches },
      { figure: "ends", printed: "72", unit: "count" },
    ]);
    expect(changes[0]).toMatchObject({ figure: "widthInReed", needed: 12, shape: "digits exchanged" });
    expect(changes.find(({ figure }) => figure === "ends")?.needed).toBe(126);
  });
});

describe("a page that rounds down", () => {
  it("is known: 3 ends of 2.6 yd are 7.8 yd, and 7 are printed", () => {
    const { verdict, ways } = reconcile([
      { figure: "ends", printed: "3", unit: "count" },
      { figure: "warpLength", printed: "2.6", unit: yards },
      { figure: "warpYarn", printed: "7", unit: yards },
    ]);
    expect(verdict).toBe("one way of rounding");
    expect(ways).toEqual([{ convention: null, rounding: "roundDown" }]);
  });
});

describe("what a page does not state", () => {
  it("is not taken for nothing: six pieces of 36 in and 242 in of warp leave 26 in to what is unsaid", () => {
    const { verdict, sums } = reconcile([
      { figure: "pieces", printed: "6", unit: "count" },
      { figure: "wovenLength", printed: "36", unit: inches },
      { figure: "warpLength", printed: "242", unit: inches },
    ]);
    expect(verdict).toBe("too little stated");
    expect(sums).toMatchObject([{ finding: "leaves room", unsaid: ["takeUpLength", "loomWaste"] }]);
  });

  it("makes up no shortage: six pieces of 36 in need 216 in at least, and 200 in are too little", () => {
    const { verdict, changes } = reconcile([
      { figure: "pieces", printed: "6", unit: "count" },
      { figure: "wovenLength", printed: "36", unit: inches },
      { figure: "warpLength", printed: "200", unit: inches },
    ]);
    expect(verdict).toBe("one change");
    expect(changes.find(({ figure }) => figure === "warpLength")?.needed).toBe(216);
  });

  it("once stated closes the sum, and a hem turned once is found", () => {
    // 2 × (20 + 2 × 1) ÷ 0.8 = 55 in and 10 in of waste; the page turns each hem once: 2 × 21 ÷ 0.8 = 52.5.
    const { verdict, ways } = reconcile([
      { figure: "pieces", printed: "2", unit: "count" },
      { figure: "finishedLength", printed: "20", unit: inches },
      { figure: "hemEachEnd", printed: "1", unit: inches },
      { figure: "lengthLoss", printed: "20", unit: "percent" },
      { figure: "takeUpLength", printed: "0", unit: inches },
      { figure: "loomWaste", printed: "10", unit: inches },
      { figure: "warpLength", printed: "62.5", unit: inches },
    ]);
    expect(verdict).toBe("one convention");
    expect(ways).toEqual([{ convention: "hem once", rounding: "nearest" }]);
  });

  it("does not hide pairs counted as ends: 200 pairs of 5 yd are 2000 yd", () => {
    const { verdict, ways } = reconcile([
      { figure: "ends", printed: "200", unit: "count" },
      { figure: "warpLength", printed: "5", unit: yards },
      { figure: "warpYarn", printed: "2000", unit: yards },
    ]);
    expect(verdict).toBe("one convention");
    expect(ways).toContainEqual({ convention: "pairs counted as ends", rounding: "nearest" });
  });
});

describe("what pages do", () => {
  it("is no misprint: 110 ends of 110 in are 336 1/9 yd, told as 340; 414 ends of 5 2/3 yd 2346, bought as 2400", () => {
    const yarn = (ends: string, printed: string, length: PrintedFigure) =>
      reconcile([
        { figure: "ends", printed: ends, unit: "count" },
        length,
        { figure: "warpYarn", printed, unit: yards },
      ]);
    const short = yarn("110", "340", { figure: "warpLength", printed: "110", unit: inches });
    expect(short.verdict).toBe("one way of rounding");
    expect(short.says[1]).toBe(
      "All agree if yarn is given in round numbers, to the nearest or the next ten or hundred.",
    );
    const long: PrintedFigure = { figure: "warpLength", printed: "5 2/3", unit: yards };
    expect(yarn("414", "2400", long).verdict).toBe("one way of rounding");
    // 26 yd too few are in no round number.
    expect(yarn("414", "2320", long).verdict).toBe("one change");
  });

  it("hides no misprint beside it: 84 ends of 68 in are 160 yd in tens, and 160 yd are 146 m, not 181", () => {
    const { verdict, changes } = reconcile([
      { figure: "ends", printed: "84", unit: "count" },
      { figure: "warpLength", printed: "68", unit: inches },
      { figure: "warpYarn", printed: "160", unit: yards },
      { figure: "warpYarnAgain", printed: "181", unit: metres },
    ]);
    expect(verdict).toBe("one change");
    expect(changes[0]).toMatchObject({ figure: "warpYarnAgain", needed: 146 });
  });

  // 14 picks to the inch, 90 in woven, 20 in wide: 25,200 in, 700 yd; a tenth more is 770.
  const weft: readonly PrintedFigure[] = [
    { figure: "picksPerLength", printed: "14", unit: picksPerInch },
    { figure: "wovenInAll", printed: "90", unit: inches },
    { figure: "widthInReed", printed: "20", unit: inches },
    { figure: "weftYarn", printed: "770", unit: yards },
  ];

  it("allows weft without saying so, and what is said closes the sum", () => {
    const { verdict, sums, says } = reconcile(weft);
    expect(verdict).toBe("too little stated");
    expect(sums).toMatchObject([{ finding: "leaves room", unsaid: ["weftAllowance"] }]);
    expect(says[1]).toMatch(/^Weft yarn: 700 yd at least, 770 yd is printed; the rest may be/u);
    const allowed = (printed: string) => reconcile([...weft, { figure: "weftAllowance", printed, unit: "percent" }]);
    expect(allowed("10").verdict).toBe("agrees");
    expect(allowed("20").verdict).toBe("one change");
  });

  it("takes as much weft as warp: just that is told where the plain sum only leaves room", () => {
    const { verdict, ways } = reconcile([...weft, { figure: "warpYarn", printed: "770", unit: yards }]);
    expect(verdict).toBe("one convention");
    expect(ways).toEqual([{ convention: "weft taken equal to warp", rounding: "nearest" }]);
  });

  it("leaves places empty or crams the edges: 20 in at 20 to the inch with 392 and with 404 ends", () => {
    const ends = (printed: string) =>
      reconcile([
        { figure: "sett", printed: "20", unit: endsPerInch },
        { figure: "widthInReed", printed: "20.0", unit: inches },
        { figure: "endsPerDent", printed: "2", unit: "count" },
        { figure: "edgeEnds", printed: "0", unit: "count" },
        { figure: "ends", printed, unit: "count" },
      ]);
    expect(ends("392").ways).toContainEqual({ convention: "places left empty", rounding: "nearest" });
    expect(ends("404").ways).toContainEqual({ convention: "edge dents crammed", rounding: "nearest" });
    // A quarter of the reed is no few places.
    expect(ends("300").verdict).toBe("one change");
  });
});

describe("a figure that cannot be", () => {
  it.each([
    [{ figure: "lengthLoss", printed: "120", unit: "percent" }, "120 %: nothing loses the whole of itself"],
    [{ figure: "ends", printed: "30.5", unit: "count" }, "30.5: these are counted whole"],
  ] as const)("is itself the finding: %o", (figure, why) => {
    const { verdict, impossible, says } = reconcile([figure]);
    expect({ verdict, impossible }).toEqual({ verdict: "impossible figure", impossible: [figure.figure] });
    expect(says[0]).toContain(`cannot be ${why}.`);
  });
});

describe("a figure that cannot be read", () => {
  it.each([
    ["words", { figure: "ends", printed: "about 30", unit: "count" }],
    ["nothing over nothing", { figure: "ends", printed: "1/0", unit: "count" }],
    ["a mass for a length", { figure: "warpLength", printed: "3", unit: grams }],
    ["a count for a length", { figure: "warpLength", printed: "3", unit: "count" }],
    ["a bare number, its last figures lost", { figure: "ends", printed: 30 as never, unit: "count" }],
    ["far too many digits", { figure: "ends", printed: "1".repeat(41), unit: "count" }],
  ] as const)("is refused: %s", (_, figure) => {
    expect(() => reconcile([figure])).toThrow(`reconcile({ ${figure.figure} }): expected`);
  });

  it("is refused when given twice", () => {
    const width = { figure: "widthInReed", printed: "20", unit: inches } as const;
    expect(() => reconcile([width, width])).toThrow("a figure given twice");
  });
});
