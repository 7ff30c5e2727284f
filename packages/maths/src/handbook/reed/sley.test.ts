import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  bell1895,
  blossomMerz2012,
  brinton1919,
  clothQuantities,
  handwovenEightDent,
  handwovenSpecificSetts,
  lisaKay2013,
  osterkampCharts,
  spaceSavingMats,
  sweetGeorgiaReeds,
  taylor1909,
  wolfensberger1921,
} from "../../sources/index.js";
import { dentsPerInch, endsPerCentimetre, endsPerInch, inches, stockportReed } from "../../units/index.js";
import { dentsInSley } from "./dents-in-sley.js";
import { endsInSley } from "./ends-in-sley.js";
import { reedForSley } from "./reed-for-sley.js";
import { settOfSley } from "./sett-of-sley.js";
import { sleyFrom, sleyReading } from "./sley-from.js";
import type { Sley } from "./sley-from.js";
import { widthOfSley } from "./width-of-sley.js";

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

const pekin = [7, ...repeated(7, [34, 2, 10, 2, 10, 2, 10, 2, 39, 5, 4, 5, 4, 5, 15, 2, 15, 5, 4, 5, 4, 5, 5]), 28, 7];

const edged = (edge: number, ground: number): readonly number[] => [edge, ground, edge];

describe("ends in a sleying", () => {
  const rows: readonly (readonly [title: string, Citation, Sley])[] = [
    [
      "taffeta, edges of nine dents with three double ends",
      published(wolfensberger1921, "p. 76, disposition 1", "4032", "4032"),
      { dents: edged(9, 1308), endsPerDent: [6, 3, 6] },
    ],
    [
      "the same counted in heddles, a double end being one",
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
    expect(() => endsInSley({ dents: [4], endsPerDent: [0] })).toThrow(QuantityError);
  });
});

describe("dents in a sleying", () => {
  cited("a crammed stripe", published(taylor1909, "p. 221 of the copy", "25", "25"), dentsInSley, [
    { dents: taylorsStripe.dents },
  ]);
  cited("satin and plain stripe", published(taylor1909, "p. 290, ch. XI", "49", "49"), dentsInSley, [
    { dents: [24, 25] },
  ]);
  cited("pekin stripe", published(wolfensberger1921, "p. 96, disposition 6", "1400", "1400"), dentsInSley, [
    { dents: pekin },
  ]);
});

describe("width of a sleying", () => {
  cited(
    "thirty dents of a 15-dent reed",
    published(blossomMerz2012, "whole post", "2", "2"),
    widthOfSley,
    [{ reed: dentsPerInch(15), dents: [30] }],
    inches,
  );
  cited(
    "mats with empty places between",
    published(spaceSavingMats, "project page", "15", "15"),
    widthOfSley,
    [{ reed: dentsPerInch(10), dents: mats.dents }],
    inches,
  );
});

describe("reed for a sleying", () => {
  cited(
    "a crammed stripe whose harness has 100 to the inch",
    published(taylor1909, "p. 221 of the copy", "35.2", "2500/71"),
    reedForSley,
    [{ sett: endsPerInch(100), ...taylorsStripe }],
    dentsPerInch,
  );
  cited(
    "satin and plain stripe whose harness has 100 to the inch",
    published(taylor1909, "p. 290, ch. XI", "33 82/146", "2450/73"),
    reedForSley,
    [{ sett: endsPerInch(100), dents: [24, 25], endsPerDent: [4, 2] }],
    dentsPerInch,
  );
  cited(
    "the same as a Stockport number",
    published(taylor1909, "p. 290, ch. XI", "67", "4900/73"),
    reedForSley,
    [{ sett: endsPerInch(100), dents: [24, 25], endsPerDent: [4, 2] }],
    stockportReed,
  );
});

describe("sett of a sleying", () => {
  const rows: readonly (readonly [title: string, Citation, reed: number, order: string])[] = [
    ["2-1-1 in a 12-dent reed", published(handwovenSpecificSetts, "whole answer", "16", "16"), 12, "2-1-1"],
    [
      "2-1-2-1-2-1-2-1-2-2 in a 10-dent reed",
      published(handwovenSpecificSetts, "whole answer", "16", "16"),
      10,
      "2-1-2-1-2-1-2-1-2-2",
    ],
    ["3-2 in an 8-dent reed", published(handwovenEightDent, "whole answer", "20", "20"), 8, "3-2"],
    ["1-2-2 in a 6-dent reed", published(sweetGeorgiaReeds, "explanation", "10", "10"), 6, "1-2-2"],
    ["3-3-4 in a 6-dent reed", published(sweetGeorgiaReeds, "explanation", "20", "20"), 6, "3-3-4"],
    ["1-1-1-2 in a 10-dent reed", published(osterkampCharts, "Reed Substitution Chart", "12.5", "12.5"), 10, "1-1-1-2"],
    ["1-2-1-2 in a 12-dent reed", published(lisaKay2013, "whole post", "18", "18"), 12, "1-2-1-2"],
    ["four empty, one full, of 30", published(bell1895, "p. 290, ch. XI", "6", "6"), 30, "0-0-0-0-1"],
    ["four empty, one full, of 40", published(bell1895, "p. 290, ch. XI", "8", "8"), 40, "0-0-0-0-1"],
    ["four empty, one full, of 10", published(bell1895, "p. 290, ch. XI", "2", "2"), 10, "0-0-0-0-1"],
    ["four empty, one full, of 15", published(bell1895, "p. 290, ch. XI", "3", "3"), 15, "0-0-0-0-1"],
  ];
  for (const [title, citation, reed, order] of rows) {
    cited(title, citation, settOfSley, [{ reed: dentsPerInch(reed), ...sleyFrom(order) }], endsPerInch);
  }

  it("is the same however often the order is written out", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 8 }), (order) => {
        fc.pre(order.some((ends) => ends > 0));
        const once = settOfSley({ reed: dentsPerInch(12), ...sleyFrom(order.join("-")) });
        const twice = settOfSley({ reed: dentsPerInch(12), ...sleyFrom([...order, ...order].join("-")) });
        expect(twice.in(endsPerCentimetre)).toBeCloseTo(once.in(endsPerCentimetre), 12);
      }),
    );
  });
});

describe("a sleying order in writing", () => {
  it("counts neighbouring dents of one number together", () => {
    expect(sleyFrom("2-1-1")).toEqual({ dents: [1, 2], endsPerDent: [2, 1] });
    expect(sleyFrom(" 0 - 1 - 1 ")).toEqual({ dents: [1, 2], endsPerDent: [0, 1] });
    expect(sleyFrom("12")).toEqual({ dents: [1], endsPerDent: [12] });
  });

  it("is refused where it is no order", () => {
    for (const text of ["", "2-", "2,1", "-1", "1--2", "0-0", "1.5-1", "a-b", "1-2".repeat(200), "123"]) {
      expect(() => sleyFrom(text)).toThrow(QuantityError);
    }
    expect(() => sleyFrom(2 as never)).toThrow(QuantityError);
    expect(sleyReading("2-1")).toMatchObject({ ok: true });
    expect(sleyReading("2,1").ok).toBe(false);
  });
});
