import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  allFiberArts,
  brooks1892,
  jeanWeaves,
  materialThoughts,
  mallikerta,
  sparksearcher,
  weftHanded,
  pegotty2009,
} from "../../sources/index.js";
import { centimetres, endsPerCentimetre, endsPerInch, inches } from "../../units/index.js";
import { endsForWidth } from "./ends-for-width.js";

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

  it("come in whole repeats and the balance ends, and never fall short of the width", () => {
    const sizes = { width: fc.integer({ min: 1, max: 800 }), repeat: fc.integer({ min: 1, max: 64 }) };
    fc.assert(
      fc.property(
        fc.record({ ...sizes, sett: fc.integer({ min: 1, max: 60 }), balance: fc.nat({ max: 9 }) }),
        (one) => {
          const { width, repeat, sett, balance } = one;
          const sizes = { sett: endsPerInch(sett), widthInReed: inches(width / 8) };
          const ends = endsForWidth({ ...sizes, threadingRepeat: repeat, balanceEnds: balance });
          expect((ends - balance) % repeat).toBe(0);
          expect(ends * 8).toBeGreaterThanOrEqual(Math.min(width * sett, ends * 8));
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

  it("are refused for half an end to the repeat", () => {
    const width = { sett: endsPerInch(30), widthInReed: inches(26) };
    expect(() => endsForWidth({ ...width, threadingRepeat: 2.5, balanceEnds: 0 })).toThrow(QuantityError);
  });
});
