import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { iso1139 } from "#ci/sources.js";
import { denier, metricCount, percentLost, tex } from "../../units/index.js";
import { convertCount } from "./convert-count.js";
import { twistContractionDirect } from "./twist-contraction-direct.js";
import { twistContraction } from "./twist-contraction.js";

describe("twist contraction of a yarn in a direct count", () => {
  cited(
    "34 tex two-fold, R 69.3 tex",
    { source: iso1139, at: "folded yarn example", status: "from memory", prints: "", exact: "1300/693" },
    twistContractionDirect,
    [{ nominal: tex(68), measured: tex("69.3") }],
    percentLost,
  );
  cited(
    "20 tex two-fold then three-fold, R 132 tex",
    { source: iso1139, at: "cabled yarn example", status: "from memory", prints: "", exact: "100/11" },
    twistContractionDirect,
    [{ nominal: tex(120), measured: tex(132) }],
    percentLost,
  );

  it("is the same as in an indirect count", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 200 }), (number, more) => {
        const [nominal, measured] = [tex(number), tex(number + more)] as const;
        const indirect = {
          nominal: convertCount(nominal, metricCount).count,
          measured: convertCount(measured, metricCount).count,
        };
        const lost = twistContractionDirect({ nominal, measured }).in(percentLost);
        expect(twistContraction(indirect).in(percentLost)).toBeCloseTo(lost, 9);
      }),
    );
  });

  it("of a yarn that came out as reckoned is nothing", () => {
    expect(twistContractionDirect({ nominal: tex(60), measured: denier(540) }).value).toBe("0");
  });

  it("is refused where the yarn came out lighter than its singles", () => {
    expect(() => twistContractionDirect({ nominal: tex(60), measured: tex(59) })).toThrow("twistContractionDirect(…)");
  });
});
