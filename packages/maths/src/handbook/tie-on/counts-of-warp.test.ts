import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { faultsOf } from "#ci/faults-of.js";
import { commonPractice } from "#ci/sources.js";
import { countsOfWarp } from "./counts-of-warp.js";

const whole = { sharingHeddle: 0, floating: 0, lost: 0, endsInEachDent: [2] };

describe("the four counts of the old warp", () => {
  // 384 − 4 − 2; 384 − 3; 384 ÷ 2.
  const doubled = { ends: 384, sharingHeddle: 4, floating: 2, lost: 3, endsInEachDent: [2] };
  for (const [title, exact, field] of [
    ["heddles of 384 ends, four doubled and two floating", "378", "heddles"],
    ["knots to 384 old ends, three lost", "381", "knots"],
    ["dents of 384 ends, two in each", "192", "dents"],
  ] as const)
    cited(title, byHand(commonPractice, exact), countsOfWarp, [doubled], field);

  // Ends 1 and 2 to 5 in dents 1 and 2, dent 3 empty; end 6 in dent 4, ends 7 to 10 in dent 5.
  const crammed = { ...whole, ends: 10, endsInEachDent: [1, 4, 0] };
  cited(
    "dents of ten ends, one and four and none in a dent",
    byHand(commonPractice, "5"),
    countsOfWarp,
    [crammed],
    "dents",
  );

  it("add up to all the ends again with those doubled, floating and lost", () => {
    const [few, dent] = [fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 6 })];
    fc.assert(
      fc.property(
        fc.integer({ min: 80, max: 3000 }),
        few,
        few,
        few,
        dent,
        (ends, sharingHeddle, floating, lost, held) => {
          const found = countsOfWarp({ ends, sharingHeddle, floating, lost, endsInEachDent: [held] });
          expect(found.heddles + sharingHeddle + floating).toBe(ends);
          expect(found.knots + lost).toBe(ends);
          expect(found.dents * held - ends).toBeGreaterThanOrEqual(0);
          expect(found.dents * held - ends).toBeLessThan(held);
        },
      ),
    );
  });

  it("are no heddle and no knot of a single end that floats and is lost", () => {
    const found = countsOfWarp({ ends: 1, sharingHeddle: 0, floating: 1, lost: 1, endsInEachDent: [2] });
    expect(found).toMatchObject({ ends: 1, heddles: 0, dents: 1, knots: 0 });
  });

  it("cannot hold more lost or doubled ends than there are, nor only empty dents", () => {
    expect(codesOf(countsOfWarp, { ...whole, ends: 3, lost: 4 })).toEqual(["no-answer"]);
    expect(codesOf(countsOfWarp, { ...whole, ends: 3, sharingHeddle: 2, floating: 2 })).toEqual(["no-answer"]);
    expect(() => countsOfWarp({ ...whole, ends: 3, lost: 4 })).toThrow(
      "more doubled, floating or lost ends than there are",
    );
    expect(() => countsOfWarp({ ...whole, ends: 3, endsInEachDent: [0] })).toThrow("only empty dents");
  });

  it("are refused for no ends and for fewer than none", () => {
    const given = { ends: 0, sharingHeddle: -1, floating: -1, lost: -1, endsInEachDent: [2, -1] };
    const fields = ["ends", "sharingHeddle", "floating", "lost", "endsInEachDent.1"];
    expect(codesOf(countsOfWarp, given)).toEqual(fields.map((field) => `out-of-range ${field}`));
    expect(faultsOf(countsOfWarp, given)).toEqual([
      "countsOfWarp({ ends }): a whole number of ends, 1 or more",
      "countsOfWarp({ sharingHeddle }): a whole number of ends, 0 or more",
      "countsOfWarp({ floating }): a whole number of ends, 0 or more",
      "countsOfWarp({ lost }): a whole number of ends, 0 or more",
      "countsOfWarp({ endsInEachDent[1] }): a whole number of ends in each dent, 0 or more",
    ]);
  });
});
