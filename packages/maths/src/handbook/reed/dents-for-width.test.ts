import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { bell1895, brooks1892, wolfensberger1921 } from "#ci/sources.js";
import { dentsPerInch, inches, scotchReed } from "../../units/index.js";
import { dentsForWidth } from "./dents-for-width.js";

describe("dents for a width", () => {
  cited("38 inches of an 1100 Scotch reed", published(brooks1892, "p. 96 of the copy", "1130", "1130"), dentsForWidth, [
    { reed: scotchReed(1100), widthInReed: inches(38) },
  ]);
  cited(
    "a Brussels width of 27 inches, 350 splits on 37",
    published(bell1895, "p. 278, ch. XI", "256", "256"),
    dentsForWidth,
    [{ reed: scotchReed(350), widthInReed: inches(27) }],
  );
  cited(
    "satin of 46 inches at 66 to the inch, 1 3/4 % added",
    published(wolfensberger1921, "p. 84, disposition 3", "3090", "3090"),
    dentsForWidth,
    [{ reed: dentsPerInch(66), widthInReed: inches("46.805") }],
  );
  cited(
    "satin to come out 46 inches wide, 66 to the inch",
    published(wolfensberger1921, "p. 84, disposition 3", "3036", "3036"),
    dentsForWidth,
    [{ reed: dentsPerInch(66), widthInReed: inches(46) }],
  );
  cited(
    "armure of 18 1/2 inches at 52 to the inch, 2 % added",
    published(wolfensberger1921, "p. 92, disposition 5", "982", "982"),
    dentsForWidth,
    [{ reed: dentsPerInch(52), widthInReed: inches("18.87") }],
  );
  cited(
    "pekin stripe of 20 1/4 inches at 68 to the inch, 1 1/2 % added",
    published(
      wolfensberger1921,
      "p. 96, disposition 6",
      "1400",
      "1398",
      "adds 23 dents where 1 1/2 % of 1377 is 20.7, to close the stripe",
    ),
    dentsForWidth,
    [{ reed: dentsPerInch(68), widthInReed: inches("20.55375") }],
  );
  it("are enough, and without the last are not", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 1, max: 4000 }), (reed, sixteenths) => {
        const dents = dentsForWidth({ reed: dentsPerInch(reed), widthInReed: inches(sixteenths / 16) });
        expect(dents * 16).toBeGreaterThanOrEqual(reed * sixteenths);
        expect((dents - 1) * 16).toBeLessThan(reed * sixteenths);
      }),
    );
  });
});

describe("the limits of dents for width", () => {
  limits(dentsForWidth, ["of less than a dent is one", { reed: dentsPerInch(10), widthInReed: inches("0.01") }, 1], {
    reed: dentsPerInch(0),
    widthInReed: inches(0),
  });
});
