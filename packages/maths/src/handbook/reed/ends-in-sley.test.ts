import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import {
  blossomMerz2012,
  brinton1919,
  clothQuantities,
  spaceSavingMats,
  taylor1909,
  wolfensberger1921,
} from "#ci/sources.js";
import { endsInSley } from "./ends-in-sley.js";
import type { Sley } from "./sley-from.js";

const repeated = <T>(times: number, part: readonly T[]): readonly T[] =>
  Array.from({ length: times }, () => part).flat();

/** Taylor's crammed stripe: 48 ends four in a dent, then five crammed and one alone with empty dents between. */
const taylorsStripe: Sley = {
  dents: [12, ...repeated(3, [1, 1, 1, 1]), 1],
  endsPerDent: [4, ...repeated(3, [5, 0, 1, 0]), 5],
};

const mats: Sley = {
  dents: [...repeated(3, [6, 12, 6, 3, 12, 3]), 6, 12, 6],
  endsPerDent: [...repeated(3, [1, 0, 1, 0, 1, 0]), 1, 0, 1],
};

const edged = (edge: number, ground: number): readonly number[] => [edge, ground, edge];

describe("ends in a sleying", () => {
  const rows: readonly (readonly [title: string, Citation, Sley])[] = [
    [
      "taffeta, edges of nine dents with three double ends",
      published(wolfensberger1921, "p. 76, disposition 1", "4032", "4032"),
      { dents: edged(9, 1308), endsPerDent: [6, 3, 6] },
    ],
    [
      "taffeta, edges of nine dents, counted in heddles, a double end being one",
      published(wolfensberger1921, "p. 76, disposition 1", "3978", "3978"),
      { dents: edged(9, 1308), endsPerDent: [3, 3, 3] },
    ],
    [
      "surah, edges of eight dents with two double ends",
      published(wolfensberger1921, "p. 80, disposition 2", "3864", "3864"),
      { dents: edged(8, 1900), endsPerDent: [4, 2, 4] },
    ],
    [
      "the surah counted in heddles",
      published(wolfensberger1921, "p. 80, disposition 2", "3832", "3832"),
      { dents: edged(8, 1900), endsPerDent: [2, 2, 2] },
    ],
    [
      "printed armure, two double ends in a dent and four at the edges",
      published(wolfensberger1921, "p. 92, disposition 5", "3984", "3984"),
      { dents: edged(7, 968), endsPerDent: [8, 4, 8] },
    ],
    [
      "72s reed of 44 inches and selvedges of a quarter inch, four in a dent",
      published(clothQuantities, "example", "3240", "3240"),
      { dents: edged(9, 1584), endsPerDent: [4, 2, 4] },
    ],
    ["a crammed stripe", published(taylor1909, "p. 221 of the copy", "71", "71"), taylorsStripe],
    [
      "carpet of 256 pitch, two chain ends to a space",
      published(brinton1919, "Brussels chapter", "512", "512"),
      { dents: [256], endsPerDent: [2] },
    ],
    ["mats with empty places between", published(spaceSavingMats, "project page", "84", "84"), mats],
    [
      "a sleying counted over two inches",
      published(blossomMerz2012, "whole post", "39", "39"),
      { dents: repeated(3, [2, 1, 2, 1, 3, 1]), endsPerDent: repeated(3, [1, 2, 1, 2, 1, 2]) },
    ],
  ];
  for (const [title, citation, sley] of rows) cited(title, citation, endsInSley, [sley]);
  it("are none for empty dents alone, which is no warp", () => {
    expect(() => endsInSley({ dents: [4], endsPerDent: [0] })).toThrow("a whole number of ends, 1 or more");
  });

  it("are those of two parts together, wherever it is cut in two", () => {
    const part = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 8 }));
    const parts = fc.array(part, { minLength: 1, maxLength: 9 });
    const ends = (sley: readonly (readonly [number, number])[]): number =>
      endsInSley({ dents: sley.map(([dents]) => dents), endsPerDent: sley.map(([, inEach]) => inEach) });
    const some = parts.filter((sley) => sley.some(([, inEach]) => inEach > 0));
    fc.assert(
      fc.property(some, some, (left, right) => {
        expect(ends([...left, ...right])).toBe(ends(left) + ends(right));
      }),
    );
  });
});
