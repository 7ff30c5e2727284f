import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import {
  astmD2260,
  brooks1892,
  davis1920,
  dooley1914,
  gateTextile,
  groenKennisnet,
  taylor1909,
  textileSchoolConversions,
  wcoHeading5205,
} from "#ci/sources.js";
import {
  cottonCount,
  decitex,
  denier,
  grams,
  linenCount,
  metresPerKilogram,
  metricCount,
  tex,
  worstedCount,
  yards,
  yardsPerPound,
} from "../../units/index.js";
import { convertCount } from "./convert-count.js";

describe("a yarn count in another system", () => {
  cited(
    "worsted ones run 560 yards to the pound",
    { source: davis1920, at: "p. 37", status: "read", prints: "560", exact: "560" },
    convertCount,
    [worstedCount(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "cotton ones run 840 yards to the pound",
    { source: davis1920, at: "p. 37", status: "read", prints: "840", exact: "840" },
    convertCount,
    [cottonCount(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "a lea of linen runs 300 yards to the pound",
    { source: taylor1909, at: "site page 238", status: "read", prints: "300", exact: "300" },
    convertCount,
    [linenCount(1), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "worsted 130s run 72,800 yards to the pound",
    { source: dooley1914, at: "footnote 5", status: "read", prints: "72800", exact: "72800" },
    convertCount,
    [worstedCount(130), yardsPerPound],
    ["count", yardsPerPound],
  );
  cited(
    "20s cotton is 30s worsted",
    { source: brooks1892, at: "site page 91", status: "read", prints: "30", exact: "30" },
    convertCount,
    [cottonCount(20), worstedCount],
    ["count", worstedCount],
  );
  cited(
    "20s cotton is 56 lea",
    { source: brooks1892, at: "site page 91", status: "read", prints: "56", exact: "56" },
    convertCount,
    [cottonCount(20), linenCount],
    ["count", linenCount],
  );
  cited(
    "48s cashmere is 32s merino",
    { source: davis1920, at: "Ex. 32, p. 49", status: "read", prints: "32", exact: "32" },
    convertCount,
    [worstedCount(48), cottonCount],
    ["count", cottonCount],
  );
  cited(
    "24s worsted is 16s cotton",
    { source: davis1920, at: "Ex. 40, p. 53", status: "read", prints: "16", exact: "16" },
    convertCount,
    [worstedCount(24), cottonCount],
    ["count", cottonCount],
  );
  cited(
    "10s cotton is 15s worsted",
    { source: astmD2260, at: "Example 1", status: "read", prints: "15", exact: "15" },
    convertCount,
    [cottonCount(10), worstedCount],
    ["count", worstedCount],
  );
  cited(
    "worsted ones are 1.86667 lea",
    { source: astmD2260, at: "Table 1", status: "read", prints: "1.86667", exact: "28/15" },
    convertCount,
    [worstedCount(1), linenCount],
    ["count", linenCount],
  );
  cited(
    "worsted ones in tex",
    { source: astmD2260, at: "Table 1", status: "read", prints: "885.812", exact: "32399455/36576" },
    convertCount,
    [worstedCount(1), tex],
    ["count", tex],
  );
  cited(
    "one yard to the pound in tex",
    { source: astmD2260, at: "Table 1", status: "read", prints: "496055", exact: "1133980925/2286" },
    convertCount,
    [yardsPerPound(1), tex],
    ["count", tex],
  );
  cited(
    "20 tex in cotton count",
    { source: gateTextile, at: "1992, Q2", status: "read", prints: "29.5", exact: "6479891/219456" },
    convertCount,
    [tex(20), cottonCount],
    ["count", cottonCount],
  );
  cited(
    "20 tex in denier",
    { source: gateTextile, at: "1992, Q2", status: "read", prints: "180", exact: "180" },
    convertCount,
    [tex(20), denier],
    ["count", denier],
  );
  cited(
    "20 tex in metric count",
    { source: gateTextile, at: "1992, Q2", status: "read", prints: "50", exact: "50" },
    convertCount,
    [tex(20), metricCount],
    ["count", metricCount],
  );
  cited(
    "90 filaments of 2 denier are metric 50",
    { source: gateTextile, at: "2018, Q23", status: "read", prints: "49.8 to 50.2", exact: "50" },
    convertCount,
    [denier(180), metricCount],
    ["count", metricCount],
  );
  cited(
    "30 tex in metric count",
    { source: groenKennisnet, at: "calculation example", status: "read", prints: "33", exact: "100/3" },
    convertCount,
    [tex(30), metricCount],
    ["count", metricCount],
  );
  cited(
    "one lea in metric count",
    {
      source: textileSchoolConversions,
      at: "count conversion table",
      status: "read",
      prints: "0.6048",
      exact: "27432000/45359237",
    },
    convertCount,
    [linenCount(1), metricCount],
    ["count", metricCount],
  );
  cited(
    "metric 14 in decitex",
    { source: wcoHeading5205, at: "heading 52.05", status: "read", prints: "714.29", exact: "5000/7" },
    convertCount,
    [metricCount(14), decitex],
    ["count", decitex],
  );
  cited(
    "metric 43 in decitex",
    { source: wcoHeading5205, at: "heading 52.05", status: "read", prints: "232.56", exact: "10000/43" },
    convertCount,
    [metricCount(43), decitex],
    ["count", decitex],
  );

  it("shows the division between a direct and an indirect system, and the factor within one kind", () => {
    expect(convertCount(cottonCount(20), tex).says).toBe("590.541 ÷ 20 Ne ≈ 29.5271 tex");
    expect(convertCount(cottonCount(20), worstedCount).says).toBe("20 Ne × 1.5 = 30 worsted count");
    expect(convertCount(tex(20), denier).says).toBe("20 tex × 9 = 180 den");
  });

  it("comes back to the same count from any system", () => {
    const there = [tex, decitex, denier] as const;
    const back = [cottonCount, worstedCount, linenCount, metricCount, yardsPerPound, metresPerKilogram] as const;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), fc.constantFrom(...there), fc.constantFrom(...back), (n, a, b) => {
        const count = b(n / 4);
        expect(convertCount(convertCount(count, a).count, b).count.value).toBe(count.value);
      }),
    );
  });

  it("is written with an equals sign where it is exact, and not where it is rounded", () => {
    expect(convertCount(tex(50), metricCount).says).toBe("1000 ÷ 50 tex = 20 Nm");
    expect(convertCount(tex(30), metricCount).says).toBe("1000 ÷ 30 tex ≈ 33.3333 Nm");
    expect(convertCount(worstedCount(3), cottonCount).says).toBe("3 worsted count × 0.666667 ≈ 2 Ne");
    // The constant, 590.541…, does not end; that its own tex makes 1 Ne does not make the sum exact.
    expect(convertCount(cottonCount(1), tex).says).toBe("590.541 ÷ 1 Ne ≈ 590.541 tex");
  });

  it("is the number itself in its own system, and reaches down to the least count there is", () => {
    expect(convertCount(tex("20.5"), tex).count.value).toBe("20.5");
    expect(convertCount(tex("0.000001"), denier).count.in(denier)).toBe(0.000009);
  });

  it("is refused for what is no count, what is no count system, and a count of nothing", () => {
    for (const [count, unit, code, says] of [
      [yards(3), tex, "wrong-kind count", "a yarn count"],
      [20, tex, "wrong-kind count", "a yarn count"],
      [{ ...tex(3) }, cottonCount, "wrong-kind count", "a yarn count"],
      [tex(3), grams, "wrong-kind unit", "a count system"],
      [tex(0), cottonCount, "out-of-range count", "a count above zero"],
      [tex(-3), cottonCount, "out-of-range count", "a count above zero"],
    ] as const) {
      expect(codesOf(() => convertCount(count as never, unit as never), null)).toEqual([code]);
      expect(() => convertCount(count as never, unit as never)).toThrow(`expected ${says}`);
    }
    expect(() => convertCount(yards(2) as never, tex)).toThrow("Counts are of a system: tex(30), cottonCount(20).");
  });
});
