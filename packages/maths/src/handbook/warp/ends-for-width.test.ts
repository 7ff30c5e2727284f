import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import { durhamWeaver, trapunto2012 } from "#ci/sources.js";
import { endsPerInch, inches } from "../../units/index.js";
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
    "a little more than 17 1/2 to the inch, 17 1/8 inches: blocks of 37, one end to balance and two borders of 20",
    published(trapunto2012, "figures of the warp", "300", "300"),
    endsPerInch("17.5"),
    inches("17.125"),
    37,
    41,
  ],
];

describe("the ends for a width", () => {
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
