import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { crimpAndTakeUp2015, hossen2015 } from "#ci/sources.js";
import { metres, percentAdded, percentLost } from "../../units/index.js";
import { clothFromThread } from "./cloth-from-thread.js";
import { crimpFromTakeUp } from "./crimp-from-take-up.js";
import { lossFromMeasures } from "./loss-from-measures.js";
import { takeUpFromCrimp } from "./take-up-from-crimp.js";
import { threadForCloth } from "./thread-for-cloth.js";

describe("crimp on the cloth and take-up on the thread", () => {
  cited(
    "a crimp of 25 % by the formula for take-up",
    published(crimpAndTakeUp2015, "equations 1 to 5", "T = 100C ÷ (100 + C)", "20"),
    takeUpFromCrimp,
    [{ crimp: percentAdded(25) }],
    percentLost,
  );
});

describe("crimp and take-up", () => {
  cited(
    "a crimp of 6 % as take-up",
    published(hossen2015, "problem 1", "5.66", "300/53"),
    takeUpFromCrimp,
    [{ crimp: percentAdded(6) }],
    percentLost,
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
    expect(() => crimpFromTakeUp({ takeUp: percentLost(100) })).toThrow("takeUp");
  });
});
