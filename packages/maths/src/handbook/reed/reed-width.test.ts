import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import {
  allOfMyLives2010,
  bell1895,
  durhamWeaver,
  dustBunniesPinwheel2013,
  fiberGeekery2011,
  franz2021,
  handwovenWinding,
  measuredThreads,
  notFibonacci2020,
  schacht2019,
  stripedFloorCovering,
} from "#ci/sources.js";
import {
  centimetres,
  dentsPerInch,
  dentsPerTenCentimetres,
  endsPerCentimetre,
  endsPerInch,
  inches,
} from "../../units/index.js";
import type { EndsPerLength } from "../../units/index.js";
import { dentsForEnds } from "./dents-for-ends.js";
import { reedWidth } from "./reed-width.js";
import { settInReed } from "./sett-in-reed.js";

type Row = readonly [title: string, Citation, ends: number, sett: EndsPerLength];

const rows: readonly Row[] = [
  [
    "2600 ends at 92",
    published(bell1895, "p. 95, ch. III", "28 1/2", "650/23", "taken up to a half inch"),
    2600,
    endsPerInch(92),
  ],
  ["562 ends at 28", published(franz2021, "figures of the sample", "20", "281/14"), 562, endsPerInch(28)],
  ["80 ends at 10", published(allOfMyLives2010, "whole page", "8", "8"), 80, endsPerInch(10)],
  ["84 ends at 4", published(stripedFloorCovering, "project page", "21", "21"), 84, endsPerInch(4)],
  ["80 ends at 5", published(allOfMyLives2010, "whole page", "16", "16"), 80, endsPerInch(5)],
];

describe("the width in the reed", () => {
  cited(
    "295 ends at 20 to the inch",
    { source: schacht2019, at: "project", status: "read", prints: "14 3/4", exact: "14.75" },
    reedWidth,
    [{ ends: 295, sett: endsPerInch(20) }],
    inches,
  );
  cited(
    "528 ends at 24 to the inch",
    { source: measuredThreads, at: "whole entry", status: "read", prints: "22", exact: "22" },
    reedWidth,
    [{ ends: 528, sett: endsPerInch(24) }],
    inches,
  );
  cited(
    "501 ends at 24 to the inch",
    { source: fiberGeekery2011, at: "whole post", status: "read", prints: "20.9", exact: "20.875" },
    reedWidth,
    [{ ends: 501, sett: endsPerInch(24) }],
    inches,
  );
  cited(
    "572 ends at 24 to the inch",
    {
      source: durhamWeaver,
      at: "15 June 2017",
      status: "read",
      prints: "23.5",
      exact: "143/6",
      differs: "misprint: 23.5 in holds 564 ends; 572 take 23.83 in",
    },
    reedWidth,
    [{ ends: 572, sett: endsPerInch(24) }],
    inches,
  );
  cited(
    "an 8-dent reed at 4 to the dent",
    { source: dustBunniesPinwheel2013, at: "November 2013", status: "read", prints: "32", exact: "32" },
    settInReed,
    [{ reed: dentsPerInch(8), endsPerDent: 4 }],
    endsPerInch,
  );

  cited(
    "572 ends at 24 to the inch, in centimetres",
    {
      source: durhamWeaver,
      at: "15 June 2017",
      status: "read",
      prints: "59.75",
      exact: "18161/300",
      differs: "misprint: it follows the 23.5 in printed beside it",
    },
    reedWidth,
    [{ ends: 572, sett: endsPerInch(24) }],
    centimetres,
  );
  cited(
    "406 ends at 20 to the inch",
    {
      source: handwovenWinding,
      at: "answer",
      status: "read",
      prints: "a little over 20",
      exact: "20.3",
    },
    reedWidth,
    [{ ends: 406, sett: endsPerInch(20) }],
    inches,
  );
  cited(
    "406 ends at 30 to the inch",
    {
      source: handwovenWinding,
      at: "answer",
      status: "read",
      prints: "a little over 13 1/2",
      exact: "203/15",
    },
    reedWidth,
    [{ ends: 406, sett: endsPerInch(30) }],
    inches,
  );
  cited(
    "183 ends at 10 to the inch",
    { source: notFibonacci2020, at: "11 January 2020", status: "read", prints: "18.3", exact: "18.3" },
    reedWidth,
    [{ ends: 183, sett: endsPerInch(10) }],
    inches,
  );

  for (const [title, citation, ends, sett] of rows) {
    cited(title, citation, reedWidth, [{ ends, sett }], inches);
  }

  it("is in centimetres where the reed is counted in them", () => {
    expect(settInReed({ reed: dentsPerTenCentimetres(50), endsPerDent: 2 }).in(endsPerCentimetre)).toBe(10);
    expect(reedWidth({ ends: 120, sett: endsPerCentimetre(8) }).unit).toBe("centimetres");
  });

  it("comes back to the ends it was made from", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 100 }), (ends, sett) => {
        const width = reedWidth({ ends, sett: endsPerInch(sett) }).in(inches);
        expect(Math.abs(width * sett - ends)).toBeLessThan(1e-9);
      }),
    );
  });

  it("counts a dent that is part filled as a whole one", () => {
    expect(dentsForEnds({ ends: 406, endsPerDent: 2 })).toBe(203);
    expect(dentsForEnds({ ends: 406, endsPerDent: 3 })).toBe(136);
    expect(dentsForEnds({ ends: 1, endsPerDent: 8 })).toBe(1);
  });

  it("refuses no ends, half an end and a sett that is a reed number", () => {
    expect(() => dentsForEnds({ ends: 0, endsPerDent: 2 })).toThrow("ends");
    expect(() => reedWidth({ ends: 3.5, sett: endsPerInch(20) })).toThrow("ends");
    expect(() => reedWidth({ ends: 3, sett: dentsPerInch(20) as never })).toThrow("sett");
    expect(() => settInReed({ reed: endsPerInch(20) as never, endsPerDent: 2 })).toThrow("reed");
  });
});
