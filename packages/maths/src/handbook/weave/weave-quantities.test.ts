import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
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
        const twice = weaveQuantities([...weave, ...weave]);
        expect(twice.ofEnds.averageFloat).toBe(ofEnds.averageFloat);
        expect(twice.ofEnds.intersections).toEqual(ofEnds.intersections.map((one) => 2 * one));
      }),
    );
  });

  it.each<[unknown, string]>([
    [[], "empty"],
    [["x.", "x"], "unreadable"],
    [["x.", ".X"], "unreadable"],
    [[""], "unreadable"],
    ["x.", "wrong-kind"],
    [null, "missing"],
    [["x".repeat(2000)], "unreadable"],
    [["xx", ".x"], "no-answer"],
    [["x.", "x."], "no-answer"],
  ])("are refused for %j", (weave, code) => {
    const call = (): unknown => weaveQuantities(weave as never);
    expect(call).toThrow(expect.objectContaining({ code }) as Error);
  });
});
