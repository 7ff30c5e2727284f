import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { gateTextile, taylor1909 } from "#ci/sources.js";
import type { Weave } from "./drawn.js";
import { plainWeave } from "./plain-weave.js";
import { weaveQuantities } from "./weave-quantities.js";

describe("the quantities of a weave", () => {
  const twoAndTwo = ["xx..", ".xx.", "..xx", "x..x"];
  cited(
    "average float of the 2/2 twill, from the drawing",
    published(gateTextile, "2006, Q66", "2", "2"),
    weaveQuantities,
    [twoAndTwo],
    "ofEnds.averageFloat",
  );
  cited(
    "plain weave intersects every pick",
    published(taylor1909, "p. 428 of the copy", "1", "1"),
    weaveQuantities,
    [plainWeave],
    "ofEnds.averageFloat",
  );

  it("differ between ends and picks where the weave does", () => {
    const rib = weaveQuantities(["x.", "x.", ".x", ".x"]);
    expect(rib.ofEnds).toEqual({ intersections: [2, 2], averageFloat: 2, longestFloat: 2 });
    expect(rib.ofPicks).toEqual({ intersections: [2, 2, 2, 2], averageFloat: 1, longestFloat: 1 });
  });

  it("are those of a thousand ends or picks, and of not one more", () => {
    // Plain weave drawn 500 times over: 1000 ends to a pick of 1000 intersections, two picks to an end.
    const wide = weaveQuantities(["x.".repeat(500), ".x".repeat(500)]);
    expect(wide.ofPicks.intersections).toEqual([1000, 1000]);
    expect(wide.ofEnds.intersections).toEqual(Array(1000).fill(2));
    const picks = (many: number): Weave => Array.from({ length: many }, (_, pick) => (pick % 2 === 0 ? "x." : ".x"));
    expect(weaveQuantities(picks(1000))).toMatchObject({ ends: 2, picks: 1000 });
    expect(codesOf(weaveQuantities, picks(1001))).toEqual(["too-long weave"]);
  });

  const bound = (rows: readonly string[]): boolean =>
    rows.every((row) => row.includes("x") && row.includes(".")) &&
    Array.from(rows[0] ?? "", (_, end) => new Set(rows.map((row) => row[end])).size).every((sides) => sides === 2);
  const weaves: fc.Arbitrary<Weave> = fc
    .tuple(fc.integer({ min: 2, max: 8 }), fc.integer({ min: 2, max: 8 }))
    .chain(([ends, picks]) =>
      fc.array(fc.string({ unit: fc.constantFrom("x", "."), minLength: ends, maxLength: ends }), {
        minLength: picks,
        maxLength: picks,
      }),
    )
    .filter(bound);

  it("do not change when the drawing begins elsewhere, is turned over, or is drawn twice", () => {
    fc.assert(
      fc.property(weaves, fc.nat(), (weave, moved) => {
        const { ofEnds, ofPicks, ends } = weaveQuantities(weave);
        const from = moved % ends;
        const shifted = weaveQuantities(weave.map((row) => row.slice(from) + row.slice(0, from)));
        expect(shifted.ofPicks).toEqual(ofPicks);
        const back = weaveQuantities(weave.map((row) => row.replace(/[x.]/gu, (mark) => (mark === "x" ? "." : "x"))));
        expect(back.ofEnds).toEqual(ofEnds);
        for (const { intersections, averageFloat } of [ofEnds, ofPicks]) {
          const floats = intersections.reduce((total, one) => total + one, 0);
          expect(averageFloat * floats, "the floats fill the repeat").toBeCloseTo(ends * weave.length, 9);
        }
        const twice = weaveQuantities([...weave, ...weave]);
        expect(twice.ofEnds.averageFloat).toBe(ofEnds.averageFloat);
        expect(twice.ofEnds.intersections).toEqual(ofEnds.intersections.map((one) => 2 * one));
      }),
    );
  });

  it.each<[unknown, string]>([
    [[], "empty weave"],
    [["x.", "x"], "unreadable weave.1"],
    [["x.", ".X"], "unreadable weave.1"],
    [[""], "unreadable weave.0"],
    ["x.", "wrong-kind weave"],
    [null, "missing weave"],
    [["x".repeat(1001)], "unreadable weave.0"],
    [["xx", ".x"], "no-answer weave"],
    [["x.", "x."], "no-answer weave"],
  ])("are refused for %j", (weave, code) => {
    expect(codesOf(weaveQuantities, weave)).toEqual([code]);
  });
});
