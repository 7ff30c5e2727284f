import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import {
  allFiberArts,
  allFiberArtsPricing,
  brooks1892,
  creativeThreads,
  cupOnTheBus2018,
  gaynes,
  horsensVaevekreds,
  jeanWeaves2014,
  mallikerta,
  marissa,
  materialThoughts,
  measuredThreads,
  pegotty2009,
  sizesBeer,
  sparksearcherBalanced,
  sunnano,
  tygartLake,
  weftHanded2010,
} from "#ci/sources.js";
import { check } from "../../check/index.js";
import { bradfordSett, centimetres, endsPerCentimetre, endsPerInch, inches } from "../../units/index.js";
import type { EndsPerLength, Length } from "../../units/index.js";
import { endsInWidth } from "./ends-in-width.js";

type Row = readonly [title: string, Citation, sett: EndsPerLength, width: Length];

const rows: readonly Row[] = [
  [
    "24 to the inch, a quarter inch",
    published(gaynes, "Simple Twill Towels", "6", "6"),
    endsPerInch(24),
    inches("0.25"),
  ],
  [
    "50 beers of Bradford, 36 inches",
    published(sizesBeer, "whole entry", "2000", "2000"),
    bradfordSett(50),
    inches(36),
  ],
  ["24 to the inch, 22 inches", published(measuredThreads, "whole entry", "528", "528"), endsPerInch(24), inches(22)],
  [
    "6 to the inch, 45 inches",
    published(allFiberArtsPricing, "worked example", "270", "270"),
    endsPerInch(6),
    inches(45),
  ],
  [
    "8 to the centimetre, 55 centimetres",
    published(creativeThreads, "whole page", "440", "440"),
    endsPerCentimetre(8),
    centimetres(55),
  ],
  ["20 to the inch, 22 inches", published(cupOnTheBus2018, "whole post", "440", "440"), endsPerInch(20), inches(22)],
  [
    "10 to the centimetre, 55 centimetres",
    published(horsensVaevekreds, "whole page", "550", "550"),
    endsPerCentimetre(10),
    centimetres(55),
  ],
  [
    "3 to the centimetre, 82 centimetres",
    published(sunnano, "whole page", "246", "246"),
    endsPerCentimetre(3),
    centimetres(82),
  ],
  ["15 to the inch, 10 inches", published(marissa, "whole page", "150", "150"), endsPerInch(15), inches(10)],
  [
    "6 to the inch, 21 inches, on a teaching page",
    published(tygartLake, "whole page", "72", "126", "misprint: 72 is 6 × 12; 6 × 21 is 126"),
    endsPerInch(6),
    inches(21),
  ],
];

describe("plain ends in a width", () => {
  cited(
    "48 inches at 48 to the inch",
    { source: jeanWeaves2014, at: "whole post", status: "read", prints: "2304", exact: "2304" },
    endsInWidth,
    [{ sett: endsPerInch(48), width: inches(48) }],
    null,
  );

  cited(
    "45 inches at 10 to the inch",
    { source: weftHanded2010, at: "14 April 2010", status: "read", prints: "450", exact: "450" },
    endsInWidth,
    [{ sett: endsPerInch(10), width: inches(45) }],
    null,
  );

  cited(
    "7 inches at 8 to the inch",
    { source: sparksearcherBalanced, at: "whole post", status: "read", prints: "56", exact: "56" },
    endsInWidth,
    [{ sett: endsPerInch(8), width: inches(7) }],
    null,
  );

  cited(
    "19.5 inches at 20 to the inch",
    { source: allFiberArts, at: "whole page", status: "read", prints: "390", exact: "390" },
    endsInWidth,
    [{ sett: endsPerInch(20), width: inches("19.5") }],
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
    endsInWidth,
    [{ sett: endsPerInch(24), width: inches(22) }],
    null,
  );

  cited(
    "38 inches of a 60s Stockport reed at two to the dent",
    { source: brooks1892, at: "chapter on calculations", status: "read", prints: "2280", exact: "2280" },
    endsInWidth,
    [{ sett: endsPerInch(60), width: inches(38) }],
    null,
  );

  cited(
    "106 centimetres at 2.5 to the centimetre",
    { source: mallikerta, at: "Pohja-en-4", status: "read", prints: "265", exact: "265" },
    endsInWidth,
    [{ sett: endsPerCentimetre("2.5"), width: centimetres(106) }],
    null,
  );

  cited(
    "24 inches at 60 to the inch",
    { source: materialThoughts, at: "Warp Speed", status: "read", prints: "1440", exact: "1440" },
    endsInWidth,
    [{ sett: endsPerInch(60), width: inches(24) }],
    null,
  );

  for (const [title, citation, sett, width] of rows) cited(title, citation, endsInWidth, [{ sett, width }]);

  it("never fall short of the width, and one fewer would", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 800 }), (sett, eighths) => {
        const ends = endsInWidth({ sett: endsPerInch(sett), width: inches(eighths / 8) });
        expect(ends * 8).toBeGreaterThanOrEqual(sett * eighths);
        expect((ends - 1) * 8).toBeLessThan(sett * eighths);
      }),
    );
  });

  it("do not grow by one because of a third of an inch", () => {
    expect(endsInWidth({ sett: endsPerInch(24), width: inches("13.3333333333333333333333333333333333") })).toBe(320);
  });

  const namesFor = (width: string, written: string): string => {
    const input = { sett: endsPerInch(20), width: inches(width) };
    const { slips, wouldFit } = check(endsInWidth, input, { written, unit: null });
    return [...slips, ...wouldFit].map((one) => one.says).join();
  };

  it("of 21 inches at 20 told as 419 may be fence posts", () => {
    expect(namesFor("21", "419")).toMatch(/counts the spaces between the ends/u);
  });

  it("of 19.95 inches at 20 told as 400 get no name, since one brings 399 to a round number as often", () => {
    expect(namesFor("19.95", "400")).toBe("");
  });

  it("are refused for no sett and for no width", () => {
    expect(() => endsInWidth({ sett: endsPerInch(0), width: inches(21) })).toThrow("more than 0");
    expect(() => endsInWidth({ sett: endsPerInch(20), width: inches(0) })).toThrow("more than 0");
  });
});
