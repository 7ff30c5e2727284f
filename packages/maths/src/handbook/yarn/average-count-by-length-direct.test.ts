import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { davis1920 } from "#ci/sources.js";
import { dramSilk, grams, kilometres, metres, tex, yards } from "../../units/index.js";
import { averageCountByLengthDirect } from "./average-count-by-length-direct.js";
import { averageCountDirect } from "./average-count-direct.js";
import { yarnMassDirect } from "./yarn-mass-direct.js";

describe("the average direct count of lots of their own length", () => {
  cited(
    "a yard each of 35 and 21 skeins, in drams",
    published(davis1920, "Ex. 33, p. 50", "26 1/4 skeins", "800/21"),
    averageCountByLengthDirect,
    [
      {
        lengths: [yards(1), yards(1)],
        counts: [
          dramSilk("28.57142857142857142857142857142857143"),
          dramSilk("47.61904761904761904761904761904761905"),
        ],
      },
    ],
    dramSilk,
  );

  it("gives the mass of all the lots together", () => {
    const lot = fc.tuple(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 1, max: 300 }));
    fc.assert(
      fc.property(fc.array(lot, { minLength: 1, maxLength: 5 }), (lots) => {
        const lengths = lots.map(([length]) => kilometres(length));
        const count = averageCountByLengthDirect({ lengths, counts: lots.map(([, number]) => tex(number)) });
        const length = kilometres(lots.reduce((total, [one]) => total + one, 0));
        const all = lots.reduce((total, [one, number]) => total + one * number, 0);
        expect(Math.abs(yarnMassDirect({ length, count }).in(grams) - all)).toBeLessThan(1e-9 * all);
      }),
    );
  });

  it("of equal lengths is the plain mean, above the average of equal masses", () => {
    const counts = [tex(30), tex(20)];
    expect(averageCountByLengthDirect({ lengths: [metres(1), metres(1)], counts }).value).toBe("25");
    expect(averageCountDirect({ masses: [grams(1), grams(1)], counts }).value).toBe("24");
  });

  it("is refused with a lot whose length is not told", () => {
    expect(() => averageCountByLengthDirect({ lengths: [metres(1)], counts: [tex(20), tex(30)] })).toThrow("counts");
  });
});
