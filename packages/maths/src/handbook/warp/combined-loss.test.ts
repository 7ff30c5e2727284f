import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice, weftHanded2010 } from "#ci/sources.js";
import { percentLost } from "../../units/index.js";
import { combinedLoss } from "./combined-loss.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("two losses one after the other", () => {
  cited(
    "12 1/2 square yards that lose a fifth each way and come out at 8",
    published(weftHanded2010, "14 April 2010", "8 of 12 1/2", "36"),
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

describe("the limits of combined loss", () => {
  limits(
    combinedLoss,
    ["of nothing and nothing is nothing", { first: percentLost(0), second: percentLost(0) }, 0, percentLost],
    { first: percentLost(100), second: percentLost(100) },
  );
});
