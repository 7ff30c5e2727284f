import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  brooks1892,
  clothQuantities,
  cnch2016,
  commonPractice,
  hossen2015,
  osterkamp,
  schoolOfWeaving,
  taylor1909,
  weftHanded,
  wolfensberger1921,
  yarnTails2009,
} from "../../sources/index.js";
import { centimetres, inches, metres, percentAdded, percentLost, yards } from "../../units/index.js";
import type { Length } from "../../units/index.js";
import { clothFromThread } from "./cloth-from-thread.js";
import { combinedLoss } from "./combined-loss.js";
import { contractionByIntersections } from "./contraction-by-intersections.js";
import { crimpFromMeasures } from "./crimp-from-measures.js";
import { crimpFromTakeUp } from "./crimp-from-take-up.js";
import { lossFromMeasures } from "./loss-from-measures.js";
import { takeUpFromCrimp } from "./take-up-from-crimp.js";
import { threadForCloth } from "./thread-for-cloth.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

type Measures = readonly [title: string, Citation, longer: Length, shorter: Length];

describe("the loss between two measures", () => {
  const rows: readonly Measures[] = [
    ["ten inches that come out at eight", published(cnch2016, "opening section", "20", "20"), inches(10), inches(8)],
    ["ten inches that come out at 8 1/2", published(osterkamp, "whole text", "15", "15"), inches(10), inches("8.5")],
    [
      "fourteen inches that come out at 11 1/2",
      published(yarnTails2009, "whole post", "18", "125/7"),
      inches(14),
      inches("11.5"),
    ],
    [
      "95 yards of warp for 90 of cloth",
      published(taylor1909, "p. 245 of the copy", "a little over 5", "100/19"),
      yards(95),
      yards(90),
    ],
    [
      "300 metres of warp for 315 yards of cloth, called a gain",
      published(
        wolfensberger1921,
        "p. 103",
        "a gain of 3 to 7 per cent",
        "997/250",
        "misprint: metres of warp are set against yards of cloth; in one unit the cloth is 4 % shorter",
      ),
      metres(300),
      yards(315),
    ],
  ];
  for (const [title, citation, before, after] of rows) {
    cited(title, citation, lossFromMeasures, [{ before, after }], percentLost);
  }

  it("is refused where the second measure is the longer, which is no loss", () => {
    expect(() => lossFromMeasures({ before: inches(8), after: inches(10) })).toThrow(QuantityError);
  });
});

describe("crimp of a thread drawn out", () => {
  const rows: readonly Measures[] = [
    [
      "21.2 cm of thread out of 20 cm of cloth",
      published(hossen2015, "problem 1", "6.0", "6"),
      centimetres("21.2"),
      centimetres(20),
    ],
    [
      "38 inches in the reed for 36 of cloth",
      published(brooks1892, "ch. IX, weight of a piece", "6", "50/9"),
      inches(38),
      inches(36),
    ],
    [
      "64 yards of warp for 60 of cloth",
      published(wolfensberger1921, "p. 88, disposition 4", "6 1/2", "20/3", "taken down to the half per cent"),
      yards(64),
      yards(60),
    ],
  ];
  for (const [title, citation, threadLength, clothLength] of rows) {
    cited(title, citation, crimpFromMeasures, [{ threadLength, clothLength }], percentAdded);
  }
});

describe("crimp and take-up", () => {
  cited(
    "a crimp of 6 % as take-up",
    published(hossen2015, "problem 1", "5.66", "300/53"),
    takeUpFromCrimp,
    [{ crimp: percentAdded(6) }],
    percentLost,
  );
  cited("a take-up of a fifth as crimp", worked("25"), crimpFromTakeUp, [{ takeUp: percentLost(20) }], percentAdded);
  cited(
    "40 yards of cloth with 5 % of crimp",
    published(clothQuantities, "example", "42", "42"),
    threadForCloth,
    [{ clothLength: yards(40), crimp: percentAdded(5) }],
    yards,
  );
  cited(
    "94 yards of satin with 72 intersections to the inch and 70s weft",
    published(taylor1909, "p. 427 of the copy", "98", "97.867428571428571428571428571428571"),
    threadForCloth,
    [
      {
        clothLength: yards(94),
        crimp: percentAdded("4.114285714285714285714285714285714"),
      },
    ],
    yards,
  );
  cited(
    "800 metres of warp with 8 % of crimp",
    published(hossen2015, "problem 3", "740.8", "20000/27", "rounded up"),
    clothFromThread,
    [{ threadLength: metres(800), crimp: percentAdded(8) }],
    metres,
  );

  it("turn into each other and back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 300 }), (crimp) => {
        const takeUp = takeUpFromCrimp({ crimp: percentAdded(crimp) });
        expect(crimpFromTakeUp({ takeUp }).in(percentAdded)).toBeCloseTo(crimp, 10);
        const cloth = clothFromThread({ threadLength: metres(100), crimp: percentAdded(crimp) });
        expect(lossFromMeasures({ before: metres(100), after: cloth }).in(percentLost)).toBeCloseTo(
          takeUp.in(percentLost),
          10,
        );
        expect(threadForCloth({ clothLength: cloth, crimp: percentAdded(crimp) }).in(metres)).toBeCloseTo(100, 10);
      }),
    );
  });

  it("keep their bases apart: a loss is no crimp", () => {
    expect(() => takeUpFromCrimp({ crimp: percentLost(6) as never })).toThrow(/percentAdded/u);
    expect(() => crimpFromTakeUp({ takeUp: percentLost(100) })).toThrow(QuantityError);
  });
});

describe("two losses one after the other", () => {
  cited(
    "12 1/2 square yards that lose a fifth each way and come out at 8",
    published(weftHanded, "14 April 2010", "8 of 12 1/2", "36"),
    combinedLoss,
    [{ first: percentLost(20), second: percentLost(20) }],
    percentLost,
  );
  cited(
    "a tenth and then a fifth",
    worked("28"),
    combinedLoss,
    [{ first: percentLost(10), second: percentLost(20) }],
    percentLost,
  );

  it("are less than their sum, and no order of them matters", () => {
    const part = fc.integer({ min: 1, max: 99 });
    fc.assert(
      fc.property(part, part, (a, b) => {
        const loss = combinedLoss({ first: percentLost(a), second: percentLost(b) }).in(percentLost);
        expect(loss).toBeLessThan(a + b);
        expect(loss).toBe(combinedLoss({ first: percentLost(b), second: percentLost(a) }).in(percentLost));
      }),
    );
  });
});

describe("contraction by intersections", () => {
  cited(
    "satin of five, 180 picks of 70s",
    published(taylor1909, "p. 427 of the copy", "4", "144/35"),
    contractionByIntersections,
    [{ intersectionsPerInch: 72, multiplier: 4, weftCount: 70 }],
  );
  cited(
    "plain cloth, 120 picks of 70s",
    published(taylor1909, "p. 428 of the copy", "6 6/7", "48/7"),
    contractionByIntersections,
    [{ intersectionsPerInch: 120, multiplier: 4, weftCount: 70 }],
  );
});

describe("what a cloth lost, by two measures", () => {
  const narrowed = { before: inches(14), after: inches(11) };
  const estimates = "the two estimates of the question, 9 and 12, added";
  cited(
    "a cloth of 11 in from 14 in the reed",
    published(schoolOfWeaving, "question", "21", "150/7", estimates),
    lossFromMeasures,
    [narrowed],
    percentLost,
  );
});
