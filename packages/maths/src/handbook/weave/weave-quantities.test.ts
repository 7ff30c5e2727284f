import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import { gateTextile, taylor1909 } from "../../sources/index.js";
import { averageFloat } from "./average-float.js";
import { basket } from "./basket.js";
import { intersectionsAmong } from "./intersections-among.js";
import { plainWeave } from "./plain-weave.js";
import { satin } from "./satin.js";
import { twill } from "./twill.js";
import { weaveQuantities } from "./weave-quantities.js";
import type { Weave } from "./drawn.js";

describe("the quantities of a weave", () => {
  const twoAndTwo = ["xx..", ".xx.", "..xx", "x..x"];
  cited(
    "average float of the 2/2 twill, from its drawing",
    published(gateTextile, "2006, Q66", "2", "2"),
    weaveQuantities,
    [twoAndTwo],
    "ofEnds.averageFloat",
  );
  cited(
    "average float of the 2/2 twill",
    published(gateTextile, "2006, Q66", "2", "2"),
    averageFloat,
    [{ threads: 4, intersections: 2 }],
    null,
  );
  cited(
    "average float of plain weave, which intersects every pick",
    published(taylor1909, "p. 428 of the copy", "1", "1"),
    averageFloat,
    [{ threads: 2, intersections: 2 }],
    null,
  );
  cited(
    "average float of a 2/2 twill, which intersects at half the picks",
    published(taylor1909, "p. 428 of the copy", "half the picks", "2"),
    averageFloat,
    [{ threads: 4, intersections: 2 }],
    null,
  );
  cited(
    "plain weave intersects every pick",
    published(taylor1909, "p. 428 of the copy", "1", "1"),
    weaveQuantities,
    [plainWeave],
    "ofEnds.averageFloat",
  );
  cited(
    "picks of plain weave at which one end intersects",
    published(taylor1909, "p. 428 of the copy", "1", "1"),
    intersectionsAmong,
    [{ threads: 1, intersections: 2, threadsInRepeat: 2 }],
    null,
  );
  cited(
    "intersections of a 5/2/1/2 twill in 40 ends",
    published(taylor1909, "p. 464 of the copy", "16", "16"),
    intersectionsAmong,
    [{ threads: 40, intersections: 4, threadsInRepeat: 10 }],
    null,
  );
  cited(
    "intersections to the inch of a satin of five, 180 picks",
    published(taylor1909, "p. 427 of the copy", "72", "72"),
    intersectionsAmong,
    [{ threads: 180, intersections: 2, threadsInRepeat: 5 }],
    null,
  );

  it("are those of the trade for the weaves every weaver knows", () => {
    const rows = [
      [plainWeave, 2, 2, 1, 1],
      [twill({ floats: [2, 1] }), 3, 2, 1.5, 2],
      [twill({ floats: [2, 2] }), 4, 2, 2, 2],
      [twill({ floats: [1, 3] }), 4, 2, 2, 3],
      [twill({ floats: [5, 2, 1, 2] }), 10, 4, 2.5, 5],
      [satin({ ends: 5, move: 2 }), 5, 2, 2.5, 4],
      [satin({ ends: 8, move: 3 }), 8, 2, 4, 7],
      [basket({ together: 2 }), 4, 2, 2, 2],
    ] as const;
    for (const [weave, ends, intersections, float, longest] of rows) {
      const found = weaveQuantities(weave);
      expect(found.ends).toBe(ends);
      expect(found.picks).toBe(ends);
      for (const set of [found.ofEnds, found.ofPicks]) {
        expect(set.intersections).toEqual(Array(ends).fill(intersections));
        expect([set.averageFloat, set.longestFloat]).toEqual([float, longest]);
      }
    }
  });

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
    expect(call).toThrow(QuantityError);
    expect(call).toThrow(expect.objectContaining({ code }) as Error);
  });

  it("are refused for a twill that does not close, a satin of six and a basket of one", () => {
    expect(() => twill({ floats: [2, 1, 1] })).toThrow("as many floats under as over");
    expect(() => twill({ floats: [0, 2] })).toThrow(QuantityError);
    expect(() => satin({ ends: 6, move: 2 })).toThrow("no factor with 6");
    expect(() => satin({ ends: 5, move: 4 })).toThrow(QuantityError);
    expect(() => basket({ together: 1 })).toThrow(QuantityError);
    expect(() => averageFloat({ threads: 4, intersections: 0 })).toThrow(QuantityError);
  });
});
