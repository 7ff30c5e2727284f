import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { gateTextile } from "#ci/sources.js";
import { kilograms, tex } from "../../units/index.js";
import { averageCountDirect } from "./average-count-direct.js";

describe("averages, contraction and regain", () => {
  cited(
    "equal masses of 30 and 20 tex",
    published(gateTextile, "2013, Q40", "24", "24"),
    averageCountDirect,
    [{ masses: [kilograms(1200), kilograms(1200)], counts: [tex(30), tex(20)] }],
    tex,
  );
});

describe("the average of direct counts", () => {
  it("lies between the finest and the coarsest", () => {
    const lot = fc.tuple(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 300 }));
    fc.assert(
      fc.property(fc.array(lot, { minLength: 1, maxLength: 6 }), (lots) => {
        const counts = lots.map(([, count]) => count);
        const given = { masses: lots.map(([mass]) => kilograms(mass)), counts: counts.map((count) => tex(count)) };
        const average = averageCountDirect(given).in(tex);
        expect(average).toBeGreaterThanOrEqual(Math.min(...counts) * (1 - 1e-12));
        expect(average).toBeLessThanOrEqual(Math.max(...counts) * (1 + 1e-12));
      }),
    );
  });
});

describe("the limits of average count direct", () => {
  limits(
    averageCountDirect,
    ["of one lot is the count of the lot", { masses: [kilograms(3)], counts: [tex(30)] }, 30, tex],
    { masses: [kilograms(0)], counts: [tex(0)] },
  );
});
