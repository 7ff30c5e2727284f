import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { textileNotes } from "#ci/sources.js";
import { denier, metricCount, tex } from "../../units/index.js";
import { convertCount } from "./convert-count.js";
import { resultantCount } from "./resultant-count.js";
import { resultantCountDirect } from "./resultant-count-direct.js";

describe("direct count of a yarn of equal plies", () => {
  cited(
    "25 tex, two ends together",
    {
      source: textileNotes,
      at: "Designation of yarns after ply",
      status: "read",
      prints: "25 tex × 2",
      exact: "50",
    },
    resultantCountDirect,
    [{ count: tex(25), plies: 2 }],
    tex,
  );

  it("of a single is its own", () => {
    expect(resultantCountDirect({ count: denier(70), plies: 1 }).in(denier)).toBe(70);
  });

  it("agrees with the indirect count of the same plies", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 12 }), (number, plies) => {
        const direct = resultantCountDirect({ count: tex(number), plies }).in(tex);
        const count = convertCount(tex(number), metricCount).count;
        const indirect = convertCount(resultantCount({ count, plies }), tex).count.in(tex);
        expect(Math.abs(indirect - direct)).toBeLessThanOrEqual(1e-12 * direct);
      }),
    );
  });

  it("refuses no plies, and an indirect count", () => {
    expect(() => resultantCountDirect({ count: tex(30), plies: 0 })).toThrow("plies");
    expect(() => resultantCountDirect({ count: metricCount(30) as never, plies: 2 })).toThrow("count");
  });
});
