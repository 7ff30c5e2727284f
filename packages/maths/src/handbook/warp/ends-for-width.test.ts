import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import {
  allFiberArts,
  allFiberArtsPricing,
  beerDefinition,
  brooks1892,
  creativeThreads,
  cupOnTheBus2018,
  durhamWeaver,
  gaynes,
  horsensVaevekreds,
  jeanWeaves,
  mallikerta,
  marissa,
  materialThoughts,
  measuredThreads,
  pegotty2009,
  sparksearcher,
  sunnano,
  trapunto2012,
  tygartLake,
  weftHanded,
} from "../../sources/index.js";
import { bradfordSett, centimetres, endsPerCentimetre, endsPerInch, inches } from "../../units/index.js";
import type { EndsPerLength, Length } from "../../units/index.js";
import { endsForWidth } from "./ends-for-width.js";

type Row = readonly [title: string, Citation, sett: EndsPerLength, width: Length, repeat: number, balance: number];

const rows: readonly Row[] = [
  [
    "30 to the inch, 26 1/4 inches, in eights and one",
    published(durhamWeaver, "1 September 2023", "", "793"),
    endsPerInch(30),
    inches("26.25"),
    8,
    1,
  ],
  [
    "24 to the inch, a quarter inch",
    published(gaynes, "Simple Twill Towels", "6", "6"),
    endsPerInch(24),
    inches("0.25"),
    1,
    0,
  ],
  [
    "50 beers of Bradford, 36 inches",
    published(beerDefinition, "whole entry", "2000", "2000"),
    bradfordSett(50),
    inches(36),
    1,
    0,
  ],
  [
    "24 to the inch, 22 inches",
    published(measuredThreads, "whole entry", "528", "528"),
    endsPerInch(24),
    inches(22),
    1,
    0,
  ],
  [
    "6 to the inch, 45 inches",
    published(allFiberArtsPricing, "worked example", "270", "270"),
    endsPerInch(6),
    inches(45),
    1,
    0,
  ],
  [
    "8 to the centimetre, 55 centimetres",
    published(creativeThreads, "whole page", "440", "440"),
    endsPerCentimetre(8),
    centimetres(55),
    1,
    0,
  ],
  [
    "20 to the inch, 22 inches",
    published(cupOnTheBus2018, "whole post", "440", "440"),
    endsPerInch(20),
    inches(22),
    1,
    0,
  ],
  [
    "10 to the centimetre, 55 centimetres",
    published(horsensVaevekreds, "whole page", "550", "550"),
    endsPerCentimetre(10),
    centimetres(55),
    1,
    0,
  ],
  [
    "3 to the centimetre, 82 centimetres",
    published(sunnano, "whole page", "246", "246"),
    endsPerCentimetre(3),
    centimetres(82),
    1,
    0,
  ],
  ["15 to the inch, 10 inches", published(marissa, "whole page", "150", "150"), endsPerInch(15), inches(10), 1, 0],
  [
    "6 to the inch, 21 inches, as a teaching page has it",
    published(tygartLake, "whole page", "72", "126", "misprint: 72 is 6 × 12; 6 × 21 is 126"),
    endsPerInch(6),
    inches(21),
    1,
    0,
  ],
  [
    "a little more than 17 1/2 to the inch, 17 1/8 inches: blocks of 37, one end to balance and two borders of 20",
    published(trapunto2012, "figures of the warp", "300", "300"),
    endsPerInch("17.5"),
    inches("17.125"),
    37,
    41,
  ],
];

describe("the ends for a width", () => {
  cited(
    "48 inches at 48 to the inch",
    { source: jeanWeaves, at: "whole post", status: "read", prints: "2304", exact: "2304" },
    endsForWidth,
    [{ sett: endsPerInch(48), widthInReed: inches(48), threadingRepeat: 1, balanceEnds: 0 }],
    null,
  );
  cited(
    "45 inches at 10 to the inch",
    { source: weftHanded, at: "14 April 2010", status: "read", prints: "450", exact: "450" },
    endsForWidth,
    [{ sett: endsPerInch(10), widthInReed: inches(45), threadingRepeat: 1, balanceEnds: 0 }],
    null,
  );
  cited(
    "7 inches at 8 to the inch",
    { source: sparksearcher, at: "whole post", status: "read", prints: "56", exact: "56" },
    endsForWidth,
    [{ sett: endsPerInch(8), widthInReed: inches(7), threadingRepeat: 1, balanceEnds: 0 }],
    null,
  );
  cited(
    "19.5 inches at 20 to the inch",
    { source: allFiberArts, at: "whole page", status: "read", prints: "390", exact: "390" },
    endsForWidth,
    [{ sett: endsPerInch(20), widthInReed: inches("19.5"), threadingRepeat: 1, balanceEnds: 0 }],
    null,
  );
  cited(
    "22 inches at 24 to the inch",
    {
      source: pegotty2009,
      at: "whole post",
      status: "read",
      prints: "180",
      exact: "528",
      differs: "misprint: 24 × 22 is 528; 180 ends would be 7.5 in",
    },
    endsForWidth,
    [{ sett: endsPerInch(24), widthInReed: inches(22), threadingRepeat: 1, balanceEnds: 0 }],
    null,
  );
  cited(
    "38 inches of a 60s Stockport reed at two to the dent",
    { source: brooks1892, at: "chapter on calculations", status: "read", prints: "2280", exact: "2280" },
    endsForWidth,
    [{ sett: endsPerInch(60), widthInReed: inches(38), threadingRepeat: 1, balanceEnds: 0 }],
    null,
  );
  cited(
    "106 centimetres at 2.5 to the centimetre",
    { source: mallikerta, at: "Pohja-en-4", status: "read", prints: "265", exact: "265" },
    endsForWidth,
    [{ sett: endsPerCentimetre("2.5"), widthInReed: centimetres(106), threadingRepeat: 1, balanceEnds: 0 }],
    null,
  );

  cited(
    "24 inches at 60 to the inch",
    { source: materialThoughts, at: "Warp Speed", status: "read", prints: "1440", exact: "1440" },
    endsForWidth,
    [{ sett: endsPerInch(60), widthInReed: inches(24), threadingRepeat: 1, balanceEnds: 0 }],
    null,
  );

  for (const [title, citation, sett, widthInReed, threadingRepeat, balanceEnds] of rows) {
    cited(title, citation, endsForWidth, [{ sett, widthInReed, threadingRepeat, balanceEnds }]);
  }

  it("come in whole repeats and the balance ends, and never fall short of the width", () => {
    const sizes = { width: fc.integer({ min: 1, max: 800 }), repeat: fc.integer({ min: 1, max: 64 }) };
    fc.assert(
      fc.property(
        fc.record({ ...sizes, sett: fc.integer({ min: 1, max: 60 }), balance: fc.nat({ max: 9 }) }),
        (one) => {
          const { width, repeat, sett, balance } = one;
          fc.pre(width * sett >= balance * 8);
          const sizes = { sett: endsPerInch(sett), widthInReed: inches(width / 8) };
          const ends = endsForWidth({ ...sizes, threadingRepeat: repeat, balanceEnds: balance });
          expect((ends - balance) % repeat).toBe(0);
          expect(ends * 8).toBeGreaterThanOrEqual(width * sett);
          expect((ends - repeat) * 8).toBeLessThan(width * sett);
        },
      ),
    );
  });

  it("are 793 for 26 1/4 in at 30, in repeats of 8 with one over: 787.5 − 1 = 786.5, 99 repeats, 792 + 1", () => {
    const width = { sett: endsPerInch(30), widthInReed: inches("26.25") };
    expect(endsForWidth({ ...width, threadingRepeat: 8, balanceEnds: 1 })).toBe(793);
  });

  it("do not grow by a repeat because of a third of an inch", () => {
    const third = inches("13.3333333333333333333333333333333333");
    expect(endsForWidth({ sett: endsPerInch(24), widthInReed: third, threadingRepeat: 4, balanceEnds: 0 })).toBe(320);
  });

  it("are refused where the width holds fewer than the balance ends", () => {
    const narrow = { sett: endsPerInch(1), widthInReed: inches(1), threadingRepeat: 1, balanceEnds: 2 };
    expect(() => endsForWidth(narrow)).toThrow("repeats of 0 or more");
  });

  it("are refused for half an end to the repeat", () => {
    const width = { sett: endsPerInch(30), widthInReed: inches(26) };
    expect(() => endsForWidth({ ...width, threadingRepeat: 2.5, balanceEnds: 0 })).toThrow("threadingRepeat");
  });
});
