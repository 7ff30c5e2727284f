import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import { taylor1909, wolfensberger1921 } from "#ci/sources.js";
import type { Unit } from "../../engine/quantity/index.js";
import { dentsPerInch, dentsPerTenCentimetres, endsPerCentimetre, endsPerInch } from "../../units/index.js";
import type { DentsPerLength } from "../../units/index.js";
import { settInReed } from "./sett-in-reed.js";

type Row = readonly [title: string, Citation, reed: DentsPerLength, endsPerDent: number, Unit<"ends per length">];

const rows: readonly Row[] = [
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
    expect(() => settInReed({ reed: dentsPerInch(10), endsPerDent: 1.5 })).toThrow("endsPerDent");
    expect(() => settInReed({ reed: endsPerInch(10) as never, endsPerDent: 2 })).toThrow("reed");
  });
});
