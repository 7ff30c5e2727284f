import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import { brinton1919, handwovenWinding, wolfensberger1921 } from "#ci/sources.js";
import { dentsForEnds } from "./dents-for-ends.js";

type Row = readonly [title: string, Citation, ends: number, endsPerDent: number];

const rows: readonly Row[] = [
  [
    "3924 ends of taffeta ground, three in a dent",
    published(wolfensberger1921, "p. 76, disposition 1", "1308", "1308"),
    3924,
    3,
  ],
  [
    "3800 ends of surah ground, two in a dent",
    published(wolfensberger1921, "p. 80, disposition 2", "1900", "1900"),
    3800,
    2,
  ],
  ["406 ends, three in a dent", published(handwovenWinding, "answer", "", "136"), 406, 3],
  ["1088 ends of ingrain carpet, two in a dent", published(brinton1919, "ingrain chapter", "544", "544"), 1088, 2],
];

describe("dents for so many ends", () => {
  for (const [title, citation, ends, endsPerDent] of rows) {
    cited(title, citation, dentsForEnds, [{ ends, endsPerDent }]);
  }

  it("leave the last dent part filled: 406 ends, three in a dent, take 136", () => {
    expect(dentsForEnds({ ends: 406, endsPerDent: 3 })).toBe(136);
  });

  it("are one for fewer ends than a dent holds", () => {
    expect(dentsForEnds({ ends: 1, endsPerDent: 4 })).toBe(1);
  });

  it("hold all the ends, and without the last dent do not", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 8 }), (ends, endsPerDent) => {
        const dents = dentsForEnds({ ends, endsPerDent });
        expect(dents * endsPerDent).toBeGreaterThanOrEqual(ends);
        expect((dents - 1) * endsPerDent).toBeLessThan(ends);
      }),
    );
  });

  it("refuses no ends, and none in a dent", () => {
    expect(() => dentsForEnds({ ends: 0, endsPerDent: 2 })).toThrow("ends");
    expect(() => dentsForEnds({ ends: 20, endsPerDent: 0 })).toThrow("endsPerDent");
  });
});
