import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import type { Unit } from "../../engine/quantity/index.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  handwovenReeds,
  reedCalculations2008,
  reedCount2015,
  settSystems2014,
  taylor1909,
  wolfensberger1921,
} from "../../sources/index.js";
import { dentsPerInch, dentsPerTenCentimetres, endsPerCentimetre, endsPerInch } from "../../units/index.js";
import type { DentsPerLength } from "../../units/index.js";
import { settInReed } from "./sett-in-reed.js";

type Row = readonly [title: string, Citation, reed: DentsPerLength, endsPerDent: number, Unit<"ends per length">];

const rows: readonly Row[] = [
  ["a 60 Stockport reed, two in a dent", published(taylor1909, "p. 243", "60", "60"), dentsPerInch(30), 2, endsPerInch],
  [
    "a 60 Stockport reed, three in a dent",
    published(taylor1909, "p. 243", "90", "90"),
    dentsPerInch(30),
    3,
    endsPerInch,
  ],
  [
    "33 1/2 dents in an inch, four in a dent",
    published(taylor1909, "p. 290, ch. XI", "134", "134"),
    dentsPerInch("33.5"),
    4,
    endsPerInch,
  ],
  [
    "80 dents in an inch, four in a dent",
    published(wolfensberger1921, "pp. 70 and 71", "320", "320"),
    dentsPerInch(80),
    4,
    endsPerInch,
  ],
  [
    "64 dents in an inch, five in a dent",
    published(wolfensberger1921, "pp. 70 and 71", "320", "320"),
    dentsPerInch(64),
    5,
    endsPerInch,
  ],
  [
    "a 72 Stockport reed, one in a dent",
    published(reedCalculations2008, "opening section", "36", "36"),
    dentsPerInch(36),
    1,
    endsPerInch,
  ],
  [
    "a 72 Stockport reed, two in a dent",
    published(reedCalculations2008, "opening section", "72", "72"),
    dentsPerInch(36),
    2,
    endsPerInch,
  ],
  [
    "a 72 Stockport reed, three in a dent",
    published(reedCalculations2008, "opening section", "108", "108"),
    dentsPerInch(36),
    3,
    endsPerInch,
  ],
  [
    "a 16 Huddersfield reed, three in a dent",
    published(settSystems2014, "Huddersfield", "48", "48"),
    dentsPerInch(16),
    3,
    endsPerInch,
  ],
  [
    "40 dents in an inch, three in a dent",
    published(reedCount2015, "examples 1 to 3", "120", "120"),
    dentsPerInch(40),
    3,
    endsPerInch,
  ],
  [
    "a 20/10 reed, one in a dent",
    published(handwovenReeds, "whole answer", "5", "127/25"),
    dentsPerTenCentimetres(20),
    1,
    endsPerInch,
  ],
  [
    "a 25/10 reed, one in a dent",
    published(handwovenReeds, "whole answer", "6", "127/20"),
    dentsPerTenCentimetres(25),
    1,
    endsPerInch,
  ],
  [
    "a 30/10 reed, one in a dent",
    published(handwovenReeds, "whole answer", "8", "381/50"),
    dentsPerTenCentimetres(30),
    1,
    endsPerInch,
  ],
  [
    "a 40/10 reed, one in a dent",
    published(handwovenReeds, "whole answer", "10", "254/25"),
    dentsPerTenCentimetres(40),
    1,
    endsPerInch,
  ],
  [
    "a 45/10 reed, one in a dent",
    published(
      handwovenReeds,
      "whole answer",
      "12",
      "1143/100",
      "the nearest reed that is made, not the nearest number",
    ),
    dentsPerTenCentimetres(45),
    1,
    endsPerInch,
  ],
  [
    "a 50/10 reed, one in a dent",
    published(handwovenReeds, "whole answer", "12", "127/10", "the nearest reed that is made, not the nearest number"),
    dentsPerTenCentimetres(50),
    1,
    endsPerInch,
  ],
  [
    "a 60/10 reed, one in a dent",
    published(handwovenReeds, "whole answer", "15", "381/25"),
    dentsPerTenCentimetres(60),
    1,
    endsPerInch,
  ],
];

describe("sett in the reed", () => {
  for (const [title, citation, reed, endsPerDent, unit] of rows) {
    cited(title, citation, settInReed, [{ reed, endsPerDent }], unit);
  }

  it("of an 80/10 reed, two in a dent, is 16 to the centimetre", () => {
    expect(settInReed({ reed: dentsPerTenCentimetres(80), endsPerDent: 2 }).in(endsPerCentimetre)).toBe(16);
  });

  it("of one end in a dent is the number of the reed", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), (dents) => {
        expect(settInReed({ reed: dentsPerInch(dents), endsPerDent: 1 }).in(endsPerInch)).toBe(dents);
      }),
    );
  });

  it("refuses half an end in a dent, and a sett for a reed", () => {
    expect(() => settInReed({ reed: dentsPerInch(10), endsPerDent: 1.5 })).toThrow(QuantityError);
    expect(() => settInReed({ reed: endsPerInch(10) as never, endsPerDent: 2 })).toThrow(QuantityError);
  });
});
