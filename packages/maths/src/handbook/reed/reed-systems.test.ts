import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import {
  brinton1919,
  brooks1892,
  handwovenReeds,
  oddWeavings,
  reedCalculations2008,
  reedCount2015,
  scottishNationalDictionary,
  settSystems2014,
  shawlWeavingArtisan,
  sponsEncyclopaedia,
  taylor1909,
} from "#ci/sources.js";
import { inUnit } from "../../engine/quantity/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { asText, explain } from "../../engine/working/index.js";
import {
  blackburnReed,
  boltonReedOf24HalfInches,
  carpetPitch,
  leedsReed,
  scotchHundreds,
  scotchReedOf40Inches,
  dewsburySett,
  manchesterReedOf36Inches,
  prestonReedOf34Inches,
  prestonReedOf39Inches,
  prestonReedOf44Inches,
  prestonReedOf58Inches,
  tweedSett,
  boltonReed,
  bradfordReed,
  bradfordSett,
  dentsPerInch,
  dentsPerTenCentimetres,
  endsPerInch,
  irishReed,
  leedsSett,
  macclesfieldReed,
  scotchPorter,
  scotchReed,
  stockportReed,
} from "../../units/index.js";
import { settInReed } from "./sett-in-reed.js";

describe("the systems of reeds", () => {
  cited(
    "a 60 Stockport reed at two to the dent",
    published(taylor1909, "split page 243", "60", "60"),
    settInReed,
    [{ reed: stockportReed(60), endsPerDent: 2 }],
    endsPerInch,
  );
  cited(
    "a 60 Stockport reed at three to the dent",
    published(taylor1909, "split page 243", "90", "90"),
    settInReed,
    [{ reed: stockportReed(60), endsPerDent: 3 }],
    endsPerInch,
  );
  cited(
    "50 Bradford sett",
    published(taylor1909, "split page 244", "55 20/36", "500/9"),
    inUnit,
    [bradfordSett(50), endsPerInch],
    endsPerInch,
  );
  cited(
    "40 Stockport in Bolton",
    published(brooks1892, "split page 92", "24 1/4", "24.25"),
    inUnit,
    [stockportReed(40), boltonReed],
    boltonReed,
  );
  cited(
    "one Bolton in dents to the inch",
    published(
      brooks1892,
      "split page 92",
      "0.8249",
      "80/97",
      "misprint: 20 ÷ 24.25 is 0.82474; the page also says 0.8245",
    ),
    inUnit,
    [boltonReed(1), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "one Bolton in Stockport",
    published(brooks1892, "split page 92", "1.6495", "160/97"),
    inUnit,
    [boltonReed(1), stockportReed],
    stockportReed,
  );
  cited(
    "one Stockport in Bolton",
    published(brooks1892, "split page 92", "0.60625", "0.60625"),
    inUnit,
    [stockportReed(1), boltonReed],
    boltonReed,
  );
  cited(
    "30 Bolton in dents to the inch",
    published(brooks1892, "split page 92", "24.747", "2400/97", "misprint: it follows the multiplier 0.8249"),
    inUnit,
    [boltonReed(30), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "10s Irish in dents to the inch",
    published(reedCount2015, "example 1", "25", "25"),
    inUnit,
    [irishReed(10), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "40 dents to the inch in Stockport",
    published(reedCount2015, "example 2", "80", "80"),
    inUnit,
    [dentsPerInch(40), stockportReed],
    stockportReed,
  );
  cited(
    "72s Bradford reed at three to the dent",
    published(reedCount2015, "example 3", "120", "120"),
    settInReed,
    [{ reed: bradfordReed(72), endsPerDent: 3 }],
    endsPerInch,
  );
  cited(
    "72 Bradford sett",
    published(settSystems2014, "entry Sett Systems", "80", "80"),
    inUnit,
    [bradfordSett(72), endsPerInch],
    endsPerInch,
  );
  cited(
    "12 porter Leeds sett",
    published(settSystems2014, "entry Sett Systems", "5.06", "152/3", "misprint: 12 × 38 ÷ 9 is 50.67"),
    inUnit,
    [leedsSett(12), endsPerInch],
    endsPerInch,
  );
  cited(
    "a reed of 16 dents at three to the dent",
    published(settSystems2014, "entry Sett Systems", "48", "48"),
    settInReed,
    [{ reed: dentsPerInch(16), endsPerDent: 3 }],
    endsPerInch,
  );
  cited(
    "1200 Irish at two to the dent",
    published(settSystems2014, "entry Sett Systems", "60", "60"),
    settInReed,
    [{ reed: irishReed(12), endsPerDent: 2 }],
    endsPerInch,
  );
  cited(
    "1200 silk at four to the dent",
    published(settSystems2014, "entry Sett Systems", "133", "400/3"),
    settInReed,
    [{ reed: macclesfieldReed(12), endsPerDent: 4 }],
    endsPerInch,
  );
  cited(
    "60s Stockport in dents to the inch",
    published(shawlWeavingArtisan, "manual pages 73-74", "30", "30"),
    inUnit,
    [stockportReed(60), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "72s Stockport at 1 to the dent",
    published(reedCalculations2008, "Reed Calculations, opening section", "36", "36"),
    settInReed,
    [{ reed: stockportReed(72), endsPerDent: 1 }],
    endsPerInch,
  );
  cited(
    "72s Stockport at 2 to the dent",
    published(reedCalculations2008, "Reed Calculations, opening section", "72", "72"),
    settInReed,
    [{ reed: stockportReed(72), endsPerDent: 2 }],
    endsPerInch,
  );
  cited(
    "72s Stockport at 3 to the dent",
    published(reedCalculations2008, "Reed Calculations, opening section", "108", "108"),
    settInReed,
    [{ reed: stockportReed(72), endsPerDent: 3 }],
    endsPerInch,
  );
  cited(
    "100s Stockport in dents to the inch",
    published(reedCalculations2008, "Reed Calculations, particulars of an order", "50", "50"),
    inUnit,
    [stockportReed(100), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "30 porter as a Scotch reed",
    published(scottishNationalDictionary, "entry Porter", "600", "600"),
    inUnit,
    [scotchPorter(30), scotchReed],
    scotchReed,
  );
  cited(
    "10 porter as a Scotch reed",
    published(scottishNationalDictionary, "entry Porter", "200", "200"),
    inUnit,
    [scotchPorter(10), scotchReed],
    scotchReed,
  );
  cited(
    "a metric reed of 20 to ten centimetres",
    published(handwovenReeds, "whole answer", "5", "5.08"),
    inUnit,
    [dentsPerTenCentimetres(20), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "a metric reed of 25 to ten centimetres",
    published(handwovenReeds, "whole answer", "6", "6.35"),
    inUnit,
    [dentsPerTenCentimetres(25), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "a metric reed of 30 to ten centimetres",
    published(handwovenReeds, "whole answer", "8", "7.62"),
    inUnit,
    [dentsPerTenCentimetres(30), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "a metric reed of 40 to ten centimetres",
    published(handwovenReeds, "whole answer", "10", "10.16"),
    inUnit,
    [dentsPerTenCentimetres(40), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "a metric reed of 45 to ten centimetres",
    published(handwovenReeds, "whole answer", "12", "11.43", "the nearest reed made, not the exact number"),
    inUnit,
    [dentsPerTenCentimetres(45), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "a metric reed of 50 to ten centimetres",
    published(handwovenReeds, "whole answer", "12", "12.7", "the nearest reed made, not the exact number"),
    inUnit,
    [dentsPerTenCentimetres(50), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "a metric reed of 60 to ten centimetres",
    published(handwovenReeds, "whole answer", "15", "15.24"),
    inUnit,
    [dentsPerTenCentimetres(60), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "a reed of 9.4 dents to the centimetre",
    published(oddWeavings, "old wooden reeds", "23.5", "23.876", "reckons the inch at 2.5 cm"),
    inUnit,
    [dentsPerTenCentimetres(94), dentsPerInch],
    dentsPerInch,
  );

  cited(
    "one Blackburn",
    published(taylor1909, "split page 244", "beers of 20 dents in 45 in", "4/9"),
    inUnit,
    [blackburnReed(1), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "one Preston on 34 in",
    published(taylor1909, "split page 244", "beers of 20 dents in 34 in", "10/17"),
    inUnit,
    [prestonReedOf34Inches(1), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "one Preston on 39 in",
    published(taylor1909, "split page 244", "beers of 20 dents in 39 in", "20/39"),
    inUnit,
    [prestonReedOf39Inches(1), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "one Preston on 44 in",
    published(taylor1909, "split page 244", "beers of 20 dents in 44 in", "5/11"),
    inUnit,
    [prestonReedOf44Inches(1), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "one Preston on 58 in",
    published(taylor1909, "split page 244", "beers of 20 dents in 58 in", "10/29"),
    inUnit,
    [prestonReedOf58Inches(1), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "one dent of a Scotch reed",
    published(taylor1909, "split page 244", "dents in 37 in", "1/37"),
    inUnit,
    [scotchReed(1), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "one Macclesfield",
    published(reedCount2015, "tables", "100 dents in 36 in", "25/9"),
    inUnit,
    [macclesfieldReed(1), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "one Manchester of a dictionary",
    published(settSystems2014, "entry Sett Systems", "splits of two threads each in 36 in", "1/36"),
    inUnit,
    [manchesterReedOf36Inches(1), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "one Leeds",
    published(settSystems2014, "entry Sett Systems", "porters of 38 threads in 9 in", "38/9"),
    inUnit,
    [leedsSett(1), endsPerInch],
    endsPerInch,
  );
  cited(
    "one Dewsbury",
    published(settSystems2014, "entry Sett Systems", "beers of 38 threads in 90 in", "19/45"),
    inUnit,
    [dewsburySett(1), endsPerInch],
    endsPerInch,
  );
  cited(
    "one porter of Scotch tweed",
    published(settSystems2014, "entry Sett Systems", "porters of 40 threads in 37 in", "40/37"),
    inUnit,
    [tweedSett(1), endsPerInch],
    endsPerInch,
  );

  const tableRow = (
    dents: number,
    printed: readonly (readonly [Unit<"dents per length">, string, string, string?])[],
  ): void => {
    for (const [system, prints, exact, differs] of printed) {
      cited(
        `${String(dents)} dents to the inch in ${system.symbol}`,
        published(brooks1892, "table p. 148, ch. IX", prints, exact, differs),
        inUnit,
        [dentsPerInch(dents), system],
        system,
      );
    }
  };
  tableRow(33, [
    [stockportReed, "66", "66"],
    [boltonReed, "40", "3201/80"],
    [scotchHundreds, "12.20", "12.21", "printed to the twentieth"],
    [scotchPorter, "61", "1221/20"],
  ]);
  tableRow(40, [
    [stockportReed, "80", "80"],
    [boltonReed, "48.5", "48.5"],
    [scotchHundreds, "14.80", "14.8"],
    [scotchPorter, "74", "74"],
  ]);
  cited(
    "a 40 porter reed in Stockport",
    published(brooks1892, "p. 147, ch. IX", "43", "1600/37"),
    inUnit,
    [scotchPorter(40), stockportReed],
    stockportReed,
  );

  const definitions: readonly (readonly [title: string, Citation, one: Unit<"dents per length">])[] = [
    ["one Stockport", published(taylor1909, "split page 243", "dents in 2 in", "1/2"), stockportReed],
    [
      "one Bolton, by definition",
      published(taylor1909, "split page 243", "beers of 20 dents in 24 1/4 in", "80/97"),
      boltonReed,
    ],
    [
      "one Bolton of a later table",
      published(reedCount2015, "tables", "beers of 20 dents in 24 1/2 in", "40/49"),
      boltonReedOf24HalfInches,
    ],
    ["one Irish", published(settSystems2014, "entry Sett Systems", "hundreds of dents in 40 in", "5/2"), irishReed],
    [
      "one Dundee porter",
      published(sponsEncyclopaedia, "Jute Manufactures", "porters of 20 splits in 37 in", "20/37"),
      scotchPorter,
    ],
    ["one Leeds as a reed", published(reedCount2015, "tables", "19 dents in 9 in", "19/9"), leedsReed],
    [
      "one dent in ten centimetres",
      published(reedCount2015, "tables", "dents in 10 cm", "0.254"),
      dentsPerTenCentimetres,
    ],
    [
      "one Scotch of Aberdeen",
      published(scottishNationalDictionary, "entry Hunder, 1778", "hundreds counted on forty inches", "1/40"),
      scotchReedOf40Inches,
    ],
    [
      "one of a carpet's pitch",
      published(brinton1919, "Brussels chapter", "reed spaces in 27 in", "1/27"),
      carpetPitch,
    ],
  ];
  for (const [title, citation, one] of definitions)
    cited(title, citation, inUnit, [one(1), dentsPerInch], dentsPerInch);
  cited(
    "one Bradford as a sett",
    published(taylor1909, "split page 244", "beers of 40 ends in 36 in", "10/9"),
    inUnit,
    [bradfordSett(1), endsPerInch],
    endsPerInch,
  );

  // Thirty dents to the inch in each system, worked from its definition: 30 × width ÷ dents of one number.
  it.each([
    [boltonReed, 36.375],
    [blackburnReed, 67.5],
    [prestonReedOf34Inches, 51],
    [prestonReedOf39Inches, 58.5],
    [prestonReedOf44Inches, 66],
    [prestonReedOf58Inches, 87],
    [scotchReed, 1110],
    [scotchPorter, 55.5],
    [irishReed, 12],
    [macclesfieldReed, 10.8],
    [manchesterReedOf36Inches, 1080],
    [bradfordReed, 54],
    [boltonReedOf24HalfInches, 36.75],
    [scotchReedOf40Inches, 1200],
    [scotchHundreds, 11.1],
    [carpetPitch, 810],
  ])("%s: thirty dents to the inch are number %d", (system, number) => {
    expect(dentsPerInch(30).in(system)).toBe(number);
  });

  it("agree, where they count ends, with sixty ends to the inch", () => {
    expect(endsPerInch(60).in(bradfordSett)).toBe(54);
    expect(endsPerInch(60).in(tweedSett)).toBe(55.5);
    expect(endsPerInch(38).in(leedsSett)).toBe(9);
    expect(endsPerInch(19).in(dewsburySett)).toBe(45);
  });

  it("are shown in dents to the inch in a working", () => {
    const lines = asText(explain(settInReed, { reed: boltonReed("36.375"), endsPerDent: 2 }));
    expect(lines).toContain("reed: 36.375 Bolton ÷ 1.2125 = 30 dents/in");
  });

  it("come back to the same number by way of any other", () => {
    const systems = fc.constantFrom(stockportReed, boltonReed, scotchReed, irishReed, macclesfieldReed);
    fc.assert(
      fc.property(systems, systems, fc.integer({ min: 1, max: 4000 }), (a, b, n) => {
        expect(inUnit(inUnit(a(n), b), a).value).toBe(String(n));
      }),
    );
  });

  it("do not mix dents with ends", () => {
    expect(() => inUnit(bradfordReed(50), endsPerInch as never)).toThrow(
      "expected a unit of dents per length, received endsPerInch",
    );
  });
});
